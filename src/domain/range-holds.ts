import { atMost } from '../science/acceptance/at-most.ts'
import type { Instrument } from './instrument.ts'
import { type BaseUnit, basePerInstrumentUnit } from './instrument-unit.ts'

/**
 * What an instrument showed, in a base unit. Where it is not known how it was read (a gauge may
 * show absolute pressure or that above the air), there is a list for each way.
 */
export type InstrumentReadings = {
  readonly base: BaseUnit
  readonly ways: readonly (readonly number[])[]
}

/**
 * Says whether an instrument's range holds what it is said to have shown, read one way or another.
 * A record that says no range in numbers, or one of another quantity, forbids nothing.
 */
export function rangeHolds(
  instrument: Pick<Instrument, 'unit' | 'rangeFrom' | 'rangeTo'>,
  { base, ways }: InstrumentReadings,
): boolean {
  const factor = basePerInstrumentUnit(instrument, base)
  if (factor === null) return true
  const { rangeFrom, rangeTo } = instrument
  const holds = (reading: number) => {
    const value = reading / factor
    const isAboveFrom = rangeFrom === null || atMost({ value: rangeFrom, limit: value })
    return isAboveFrom && (rangeTo === null || atMost({ value, limit: rangeTo }))
  }
  return ways.some((readings) => readings.every(holds))
}
