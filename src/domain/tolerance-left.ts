import type { Calibration, ToleranceState } from './instrument.ts'

/**
 * How a calibration left an instrument against its tolerance. Where it says nothing of that, as it
 * found it: nothing says that it was adjusted.
 */
export function toleranceLeft({
  asFound,
  asLeft,
}: Pick<Calibration, 'asFound' | 'asLeft'>): ToleranceState {
  return asLeft === 'not-stated' ? asFound : asLeft
}
