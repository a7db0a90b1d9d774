/** Why an instrument may not be used for a reading. */
export const useFaults = [
  'overdue',
  'never-calibrated',
  'left-beyond',
  'withdrawn',
  'out-of-range',
] as const
export type UseFault = (typeof useFaults)[number]

/** Asked for by who measures, answered once by an inspector; for one order and instrument. */
export type UseException = {
  readonly id: number
  readonly workOrderId: number
  readonly workOrderNumber: string
  readonly instrumentId: number
  readonly instrumentNumber: string
  readonly fault: UseFault
  readonly reason: string
  readonly askedById: number
  readonly askedByName: string
  readonly askedAt: string
  /** Null where no inspector answered yet. */
  readonly answer: UseExceptionAnswer | null
}

export type UseExceptionAnswer = {
  readonly answer: 'allowed' | 'declined'
  /** Last day on which it may be used; null where it was declined. */
  readonly validUntil: string | null
  readonly reason: string
  readonly byName: string
  readonly at: string
}
