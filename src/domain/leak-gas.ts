/** Gases that a leak may be told for, beside the one it was tested with. */
export const leakGases = [
  'air',
  'nitrogen',
  'helium',
  'argon',
  'carbon-dioxide',
  'hydrogen',
] as const
export type LeakGas = (typeof leakGases)[number]

/** Dynamic viscosity at 20 °C and one atmosphere (from memory): what the form starts from. */
export const usualViscosityUPaS: Readonly<Record<LeakGas, number>> = {
  air: 18.2,
  nitrogen: 17.6,
  helium: 19.6,
  argon: 22.3,
  'carbon-dioxide': 14.7,
  hydrogen: 8.8,
}
