import { confirmField } from '../../src/domain/confirmed.ts'

/** The names of the form's fields that stay as typed. */
export const staticTestValueNames = [
  confirmField,
  'section',
  'startPressure',
  'endPressure',
  'pressureUnit',
  'pressureReference',
  'barometerKPa',
  'startTemperatureC',
  'endTemperatureC',
  'startedAt',
  'durationMin',
  'durationS',
  'volumeL',
  'stabilisationS',
  'leakPlace',
  'knownVolumeL',
  'filledPressure',
  'beforePressure',
  'joinedPressure',
  'gaugeInstrumentId',
  'thermometerInstrumentId',
  'volumeInstrumentId',
  'volumeUncertaintyPercent',
  'pressureUncertaintyPa',
  'temperatureUncertaintyK',
  'timeUncertaintyS',
  'note',
  'reason',
] as const
export type StaticTestValueName = (typeof staticTestValueNames)[number]

/** The form as typed: every value a text, '' where nothing was entered. */
export type StaticTestFormValues = Readonly<Record<StaticTestValueName, string>>
