import type { MeasuredAccuracy } from './measured-accuracy.ts'

/**
 * Standard uncertainty of one reading of an indicator, from its step, its calibration and its error,
 * as far as they are known: JCGM 100:2008, 4.3.3, 4.3.7 and F.2.2.1.
 */
export function readingUncertaintyUm(
  accuracy: Pick<MeasuredAccuracy, 'standardUncertaintyUm' | 'largestErrorUm' | 'resolutionUm'>,
): number {
  const { standardUncertaintyUm, largestErrorUm, resolutionUm } = accuracy
  return Math.hypot(
    resolutionUm / Math.sqrt(12),
    standardUncertaintyUm ?? 0,
    (largestErrorUm ?? 0) / Math.sqrt(3),
  )
}
