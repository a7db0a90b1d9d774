import { formatFixed } from '../../src/science/rounding/format-fixed.ts'

/** A length of a survey in µm: as fine as a tenth, which no dial shows. */
export function umText(um: number): string {
  return formatFixed({ value: um, decimals: Math.abs(um) >= 100 ? 0 : 1 }).replace('-', '−')
}
