/** Fields of the form that a volume by expansion is found from. */
export const expansionFields = [
  'knownVolumeL',
  'filledPressure',
  'beforePressure',
  'joinedPressure',
] as const
