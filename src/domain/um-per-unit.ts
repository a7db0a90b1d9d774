import { exactFactors } from '../science/units/exact-factors.ts'
import type { Instrument, InstrumentUnit } from './instrument.ts'
import type { LengthUnit } from './measured-value.ts'

const inchUm = exactFactors.inch.value * 1e6

const ofUnit: Readonly<Record<Exclude<LengthUnit, 'graduations'>, number>> = {
  um: 1,
  mm: 1000,
  in: inchUm,
  uin: inchUm / 1e6,
}

const ofInstrument: Readonly<Partial<Record<InstrumentUnit, number>>> = {
  um: ofUnit.um,
  mm: ofUnit.mm,
  in: ofUnit.in,
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
  const factor = umPerInstrumentUnit(instrument)
  return step === null || factor === null ? null : step * factor
}

/** How many µm one of the unit is that an instrument's numbers are in; null for another unit. */
export function umPerInstrumentUnit(
  instrument: Pick<Instrument, 'unit'> | undefined,
): number | null {
  if (instrument === undefined || instrument.unit === '') return null
  return ofInstrument[instrument.unit] ?? null
}
