import { figure, type Rounding } from '../../src/domain/figure.ts'
import type { Limit } from '../../src/domain/limit-set.ts'
import { isPerMmUnit, type LimitUnit, limitUnitMeaning } from '../../src/domain/limit-unit.ts'
import { limitSetsWords } from '../words/en/limit-sets.ts'

const bands: Rounding = { decimals: 2 }
const threeDigits: Rounding = { digits: 3 }
const thousandths: Rounding = { decimals: 3 }

/** How far a limit is printed in each unit; the certificate rounds its own the same way. */
const rounding: Readonly<Record<LimitUnit, Rounding>> = {
  um: thousandths,
  mm: thousandths,
  uin: { decimals: 1 },
  in: { decimals: 4 },
  'helium-bands': bands,
  'sodium-bands': bands,
  'mercury-green-bands': bands,
  'helium-neon-red-bands': bands,
  'um-tir': { decimals: 1 },
  'mm-tir': thousandths,
  'in-tir': { decimals: 4 },
  'um-per-mm': threeDigits,
  'mm-per-mm': threeDigits,
  'in-per-in': threeDigits,
  'helium-bands-per-mm': threeDigits,
  kPa: { decimals: 2 },
  bar: threeDigits,
  psi: threeDigits,
  mbar: threeDigits,
  'pa-m3-per-s': threeDigits,
  'ml-per-min': threeDigits,
  'mbar-l-per-s': threeDigits,
  'sccm-0c': threeDigits,
  'g-per-h': threeDigits,
  'oz-per-h': threeDigits,
  'g-per-day': threeDigits,
  'ml-per-h': threeDigits,
  'liquid-ml-per-min': threeDigits,
  'ml-per-m3': threeDigits,
  'ppm-by-volume': threeDigits,
}

/** A limit with both its sides in one unit: `≥ 1.500 mm, ≤ 3.200 mm`. */
export function limitInUnitText(
  limit: Pick<Limit, 'lower' | 'upper' | 'perMmOf'>,
  unit: LimitUnit,
): string {
  const { lower, upper, perMmOf } = limit
  const { units, perMmOf: sizes } = limitSetsWords
  const of = perMmOf === null || !isPerMmUnit(unit) ? '' : ` ${sizes[perMmOf]}`
  const side = (sign: string, stored: number) => {
    const { text } = figure(limitUnitMeaning[unit].fromStored(stored), rounding[unit])
    return `${sign} ${text} ${units[unit]}${of}`
  }
  return [
    ...(lower === null ? [] : [side('≥', lower)]),
    ...(upper === null ? [] : [side('≤', upper)]),
  ].join(', ')
}
