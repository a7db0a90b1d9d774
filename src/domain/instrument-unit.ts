import { exactFactors } from '../science/units/exact-factors.ts'
import { pascalsPerUnit } from '../science/units/pressure-unit.ts'
import type { Instrument, InstrumentUnit } from './instrument.ts'

/** The unit that figures of one quantity are computed in; of a temperature, its degrees. */
export const baseUnits = ['um', 'Pa', 'K', 'L', 'mL-per-min', 'g', 'per-min'] as const
export type BaseUnit = (typeof baseUnits)[number]

type InBase = { readonly base: BaseUnit; readonly factor: number }

/** Exact by definition, all of them. */
const inBase: Readonly<Record<InstrumentUnit, InBase>> = {
  um: { base: 'um', factor: 1 },
  mm: { base: 'um', factor: 1000 },
  in: { base: 'um', factor: exactFactors.inch.value * 1e6 },
  kPa: { base: 'Pa', factor: pascalsPerUnit.kPa },
  bar: { base: 'Pa', factor: pascalsPerUnit.bar },
  psi: { base: 'Pa', factor: pascalsPerUnit.psi },
  C: { base: 'K', factor: 1 },
  L: { base: 'L', factor: 1 },
  'mL-per-min': { base: 'mL-per-min', factor: 1 },
  g: { base: 'g', factor: 1 },
  'per-min': { base: 'per-min', factor: 1 },
}

/**
 * How many of a base unit one of the unit is that an instrument's numbers are in; null where that
 * is of another quantity or not stated.
 */
export function basePerInstrumentUnit(
  instrument: Pick<Instrument, 'unit'> | undefined,
  base: BaseUnit,
): number | null {
  if (instrument === undefined || instrument.unit === '') return null
  const known = inBase[instrument.unit]
  return known.base === base ? known.factor : null
}
