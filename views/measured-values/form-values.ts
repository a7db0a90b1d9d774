import { confirmField } from '../../src/domain/confirmed.ts'

/** The names of the form's fields that stay as typed. */
export const measuredValueNames = [
  confirmField,
  'characteristic',
  'componentId',
  'condition',
  'instrumentId',
  'unit',
  'sizeMm',
  'leverAngleDeg',
  'cutOffMm',
  'traceDirection',
  'tipRadiusUm',
  'evaluationLengthMm',
  'faceState',
  'temperatureHalfWidthK',
  'settingStandardUncertaintyUm',
  'note',
  'reason',
] as const
export type MeasuredValueName = (typeof measuredValueNames)[number]

/** The form as typed: every value a text, '' where nothing was entered. */
export type MeasuredFormValues = Readonly<Record<MeasuredValueName, string>> & {
  /** As many as there are fields for. */
  readonly readings: readonly string[]
}
