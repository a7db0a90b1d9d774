import {
  type SixteenPercentRule,
  sixteenPercentRule,
} from '../science/acceptance/sixteen-percent-rule.ts'
import type { MeasuredValue } from './measured-value.ts'

/** What the single traces of a finish say beside their mean. */
export type FinishTraces = {
  readonly count: number
  readonly largestUm: number
  /** Null without an upper limit. It decides nothing: what is held to the limit is the mean. */
  readonly rule: SixteenPercentRule | null
}

/**
 * Looks at the traces of a roughness one by one; null for anything else, whose readings repeat one
 * figure.
 * @param upperUm as it is judged by; null where there is no limit
 */
export function finishTraces(
  { characteristic, readings }: Pick<MeasuredValue, 'characteristic' | 'readings'>,
  upperUm: number | null,
): FinishTraces | null {
  if (characteristic !== 'roughness') return null
  const values = readings.map((one) => one.um)
  return {
    count: values.length,
    largestUm: Math.max(...values),
    rule: upperUm === null ? null : sixteenPercentRule({ values, upperLimit: upperUm }),
  }
}
