import { exactFactors } from '../science/units/exact-factors.ts'
import type { Instrument } from './instrument.ts'
import { basePerInstrumentUnit } from './instrument-unit.ts'
import type { LengthUnit } from './measured-value.ts'

const inchUm = exactFactors.inch.value * 1e6

const ofUnit: Readonly<Record<Exclude<LengthUnit, 'graduations'>, number>> = {
  um: 1,
  mm: 1000,
  in: inchUm,
  uin: inchUm / 1e6,
}

/**
 * How many µm one of a unit is. A graduation is that of the instrument: null where its record
 * says none, or none of a length.
 */
export function umPerUnit(
  unit: LengthUnit,
  instrument: Pick<Instrument, 'unit' | 'resolutionStep'> | undefined,
): number | null {
  if (unit !== 'graduations') return ofUnit[unit]
  const step = instrument?.resolutionStep ?? null
  const factor = basePerInstrumentUnit(instrument, 'um')
  return step === null || factor === null ? null : step * factor
}
