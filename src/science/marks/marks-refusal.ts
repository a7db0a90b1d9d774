/** Why marks give no honest figure. */
export const marksRefusals = [
  'edges-not-one-ring',
  'view-too-oblique',
  'mark-off-land',
  'too-few-marks',
  'too-few-orders',
  'marks-leave-gap',
  'marks-leave-edge',
  'mark-does-not-fit',
] as const

/** A refusal: what it is about, with the figure that was measured and the limit it missed. */
export interface MarksRefusal {
  readonly kind: 'refused'
  readonly reason: (typeof marksRefusals)[number]
  /** Number of the mark, from 0, where it is about one. */
  readonly markIndex: number | null
  readonly measured: number
  readonly limit: number
  /** Where marks are missing: degrees counter-clockwise from the right, both ends of the gap. */
  readonly gapDeg: readonly [number, number] | null
}
