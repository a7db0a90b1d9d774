import type { LeakAssumption } from '../../../src/domain/answer-leak-convert.ts'

/** Sentences that the calculators of leaks answer with. */
export const leakCalculatorWords = {
  assumes: {
    'ideal-gas': () => 'Ideal gas.',
    'at-reference-temperature': (celsius: string) =>
      `A unit that names no temperature is of gas at ${celsius} °C, its volume at 101.325 kPa.`,
    'as-air': () => 'Mass as dry air, 28.96 g/mol.',
  } satisfies Record<LeakAssumption, (celsius: string) => string>,
  storedEnergyCaution:
    'Gas under pressure lets this energy go at once when something gives way: pieces fly, and the blast hurts. Test with liquid where it can be done, keep the volume small, stand behind a shield, raise the pressure in steps, and let it off before anything is touched. Pressure limits, distances and who may test follow from the site rules, local codes and licensed practice; this figure replaces none of them.',
} as const
