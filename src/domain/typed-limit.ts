import type { Characteristic } from './characteristic.ts'
import type { NewLimit, PerMmOf } from './limit-set.ts'
import { type LimitUnit, limitUnitMeaning } from './limit-unit.ts'
import { parseDecimal } from './parse-decimal.ts'

type Written = Pick<NewLimit, 'asWritten' | 'basis' | 'source'> & {
  readonly characteristic: Characteristic
  /** As they are typed; '' or absent: no limit that side. */
  readonly lower?: string
  readonly upper?: string
  readonly unit: LimitUnit
  readonly perMmOf?: PerMmOf
}
type Further = Partial<
  Omit<NewLimit, keyof Written | 'lower' | 'upper' | 'typedLower' | 'typedUpper' | 'typedUnit'>
>

const everywhere = {
  faceMaterial: null,
  componentKind: null,
  service: null,
  diameterOverMm: null,
  diameterUpToMm: null,
  pressureOverKPa: null,
  pressureUpToKPa: null,
  speedOverPerMin: null,
  speedUpToPerMin: null,
  withinS: null,
  volumeAtMostL: null,
  startAtLeastKPaGauge: null,
  edition: '',
  clause: '',
} as const

/**
 * A limit from what a form would send: numbers as typed, in their unit; for whatever it may be
 * where no condition is given.
 * @throws RangeError when a number is none
 */
export function typedLimit(written: Written & Further): NewLimit {
  const { lower = '', upper = '', unit, perMmOf = null, ...further } = written
  return {
    ...everywhere,
    ...further,
    lower: lower === '' ? null : storedOf(lower, unit),
    upper: upper === '' ? null : storedOf(upper, unit),
    perMmOf,
    typedLower: lower,
    typedUpper: upper,
    typedUnit: unit,
  }
}

function storedOf(typed: string, unit: LimitUnit): number {
  const value = parseDecimal(typed)
  if (value === undefined) throw new RangeError(`typedLimit requires a decimal, got ${typed}`)
  return limitUnitMeaning[unit].toStored(value)
}
