import type { BudgetValues } from './budget-values.ts'

/** One direction as typed. */
export type DirectionValues = {
  readonly directionDeg: string
  readonly bands: string
  readonly bowMm: string
  readonly spacingMm: string
}

/** The form as typed: every value a text, '' where nothing was entered. */
export type FlatnessFormValues = {
  readonly faceId: string
  readonly condition: string
  readonly pattern: string
  readonly ringCentre: string
  readonly unreadableCause: string
  readonly readings: readonly DirectionValues[]
  readonly lampInstrumentId: string
  readonly opticalFlatInstrumentId: string
  readonly viewingAngleDeg: string
  readonly soakMin: string
  readonly temperatureC: string
  readonly budget: BudgetValues
  readonly note: string
  readonly reason: string
  /** `yes` where the user said that a value beyond the trade's window stands. */
  readonly confirmBeyondWindow: string
}
