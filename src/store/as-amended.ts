import type { Instrument } from '../domain/instrument.ts'
import { amendedNames, type InstrumentNumbers } from '../domain/instrument-amendment.ts'
import { amendmentsOf } from './amendments-of.ts'
import { calibrationsOf } from './calibrations-of.ts'
import type { Store } from './open.ts'

/** An instrument as it is known now: what stood on registering, gone over by what was amended. */
export function asAmended(store: Store, registered: Omit<Instrument, 'calibrations'>): Instrument {
  const { id } = registered
  const newest = amendmentsOf(store).all({ id }).at(-1)
  const numbers = newest === undefined ? {} : numbersOf(newest)
  return { ...registered, ...numbers, calibrations: calibrationsOf(store).all({ id }) }
}

function numbersOf(amended: InstrumentNumbers): InstrumentNumbers {
  const pairs = amendedNames.map((name) => [name, amended[name]])
  return Object.fromEntries(pairs) as InstrumentNumbers
}
