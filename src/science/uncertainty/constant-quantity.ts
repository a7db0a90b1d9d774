import { requireFinite } from '../check/require-finite.ts'
import type { ModelQuantity } from './measurement-model.ts'

/**
 * Gives a quantity of a measurement model that is taken as exact.
 *
 * @param name as the expression names it: a letter, then letters and digits
 * @param value any finite number, in the unit of the quantity
 * @returns the quantity, with a standard uncertainty of 0
 * @throws RangeError for a value that is not finite
 * @example constantQuantity('volumeL', 5).standardUncertainty // 0
 */
export function constantQuantity(name: string, value: number): ModelQuantity {
  requireFinite('constantQuantity', name, value)
  return { name, value, distribution: 'normal', standardUncertainty: 0, degreesOfFreedom: null }
}
