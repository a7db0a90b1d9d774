import type { Evidence } from './evidence.ts'

/** Says whether anything of an order was measured, as found or since replaced too. */
export function isMeasured(
  evidence: Pick<Evidence, 'flatnessReadings' | 'staticTests' | 'measuredValues'>,
): boolean {
  const { flatnessReadings, staticTests, measuredValues } = evidence
  return [flatnessReadings, staticTests, measuredValues].some((one) => one.length > 0)
}
