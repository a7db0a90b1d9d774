/** Fields of the form that name an instrument. */
export const instrumentFields = [
  'gaugeInstrumentId',
  'thermometerInstrumentId',
  'volumeInstrumentId',
] as const
