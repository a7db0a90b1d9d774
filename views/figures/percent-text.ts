import { formatFixed } from '../../src/science/rounding/format-fixed.ts'

/**
 * A share as percent, with one decimal; what would round to nothing or to all is told as a bound.
 * @param share from 0
 * @example percentText(0.9522) // 95.2 %
 */
export function percentText(share: number): string {
  const percent = share * 100
  if (percent < 100 && percent >= 99.95) return '> 99.9 %'
  if (percent > 0 && percent < 0.05) return '< 0.1 %'
  return `${formatFixed({ value: percent, decimals: 1 })} %`
}
