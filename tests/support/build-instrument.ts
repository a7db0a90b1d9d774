import type {
  Calibration,
  Instrument,
  InstrumentKind,
  InstrumentUse,
  NewInstrument,
} from '../../src/domain/instrument.ts'
import { amendedNames, type InstrumentNumbers } from '../../src/domain/instrument-amendment.ts'

const numbers: Readonly<Record<InstrumentKind, { readonly id: number; readonly number: string }>> =
  {
    lamp: { id: 1, number: 'L-01' },
    'optical-flat': { id: 2, number: 'F-01' },
    'pressure-gauge': { id: 3, number: 'G-01' },
    thermometer: { id: 4, number: 'T-01' },
    'dial-indicator': { id: 5, number: 'D-01' },
    'lever-indicator': { id: 6, number: 'E-01' },
    micrometer: { id: 7, number: 'M-01' },
    profilometer: { id: 8, number: 'P-01' },
    'pressure-transducer': { id: 9, number: 'G-09' },
    'flow-meter': { id: 10, number: 'Q-01' },
    balance: { id: 11, number: 'B-01' },
    volume: { id: 12, number: 'V-01' },
    'test-rig': { id: 13, number: 'R-01' },
  }

export function buildCalibration(changes: Partial<Calibration> = {}): Calibration {
  return {
    id: 1,
    instrumentId: 1,
    calibratedOn: '2026-01-15',
    dueOn: '2027-01-15',
    certificateNumber: 'K-1',
    laboratory: '',
    asFound: 'not-stated',
    asFoundError: null,
    asLeft: 'not-stated',
    asLeftError: null,
    expandedUncertainty: null,
    coverageFactor: null,
    note: '',
    ...changes,
  }
}

/** The same before the store gives it an id. */
export function newCalibration(changes: Partial<Calibration> = {}): Omit<Calibration, 'id'> {
  const { id: _, ...fresh } = buildCalibration(changes)
  return fresh
}

/** An instrument in calibration through 2026; each kind has its own id, from 1 to 4. */
export function buildInstrument(
  kind: InstrumentKind = 'lamp',
  changes: Partial<Instrument> = {},
): Instrument {
  return {
    ...numbers[kind],
    kind,
    name: kind,
    serial: '',
    lampId: kind === 'lamp' ? 'helium' : null,
    flatToleranceUm: kind === 'optical-flat' ? 0.05 : null,
    range: '',
    resolution: '',
    unit: '',
    rangeFrom: null,
    rangeTo: null,
    resolutionStep: null,
    largestError: null,
    withdrawnOn: null,
    calibrations: [buildCalibration({ instrumentId: numbers[kind].id })],
    ...changes,
  }
}

/** The same before the store gives it an id, without calibrations. */
export function newInstrument(
  kind: InstrumentKind,
  changes: Partial<NewInstrument> = {},
): NewInstrument {
  const { id: _1, calibrations: _2, withdrawnOn: _3, ...fresh } = buildInstrument(kind)
  return { ...fresh, ...changes }
}

/** One of each kind: lamp 1, optical flat 2, pressure gauge 3, thermometer 4. */
export function buildInstruments(): readonly Instrument[] {
  return [
    buildInstrument('lamp'),
    buildInstrument('optical-flat'),
    buildInstrument('pressure-gauge'),
    buildInstrument('thermometer'),
  ]
}

export function buildInstrumentUse(
  kind: InstrumentKind = 'lamp',
  changes: Partial<InstrumentUse> = {},
): InstrumentUse {
  const { id, number } = numbers[kind]
  return {
    instrumentId: id,
    number,
    name: kind,
    serial: '',
    kind,
    status: 'in-calibration',
    dueOn: '2027-01-15',
    certificateNumber: 'K-1',
    ...changes,
  }
}

/** The part of an instrument that can be amended. */
export function numbersOf(of: Instrument): InstrumentNumbers {
  const pairs = amendedNames.map((name) => [name, of[name]])
  return Object.fromEntries(pairs) as InstrumentNumbers
}
