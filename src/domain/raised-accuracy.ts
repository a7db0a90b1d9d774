import type { MeasuredAccuracy } from './measured-accuracy.ts'
import { readingUncertaintyUm } from './reading-uncertainty-um.ts'

/**
 * The accuracy of an instrument of which somebody stated how well one reading is known: what that is
 * more than its papers say counts as its calibration; a smaller figure changes nothing.
 * @param statedUm standard uncertainty of one reading, 0 or more
 */
export function raisedAccuracy(accuracy: MeasuredAccuracy, statedUm: number): MeasuredAccuracy {
  const ofPapers = readingUncertaintyUm(accuracy)
  if (statedUm <= ofPapers) return accuracy
  const rest = readingUncertaintyUm({ ...accuracy, standardUncertaintyUm: null })
  return { ...accuracy, standardUncertaintyUm: Math.sqrt(statedUm ** 2 - rest ** 2) }
}
