/** Why a picture gives no honest figure, in the order in which causes are asked for. */
export const photoRefusals = [
  'edges-not-found',
  'face-cut-by-frame',
  'face-too-small',
  'view-too-oblique',
  'overexposed',
  'no-clear-bands',
  'lamp-of-many-colours',
  'too-few-bands',
  'bands-too-fine',
  'face-partly-hidden',
  'model-does-not-fit',
  'noisy',
  'ambiguous',
  'uncertainty-too-large',
] as const

export type PhotoRefusalReason = (typeof photoRefusals)[number]

/** A refusal with the figure that was measured and the limit it missed, where there is one. */
export interface PhotoRefusal {
  readonly kind: 'refused'
  readonly reason: PhotoRefusalReason
  readonly measured: number | null
  readonly limit: number | null
}
