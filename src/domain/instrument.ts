import type { UseFault } from './use-exception.ts'

export const instrumentKinds = [
  'lamp',
  'optical-flat',
  'dial-indicator',
  'lever-indicator',
  'micrometer',
  'profilometer',
  'pressure-gauge',
  'pressure-transducer',
  'thermometer',
  'flow-meter',
  'balance',
  'volume',
  'test-rig',
] as const
export type InstrumentKind = (typeof instrumentKinds)[number]

/** Units that instruments read in; '' where it is not stated. */
export const instrumentUnits = [
  'um',
  'mm',
  'in',
  'kPa',
  'bar',
  'psi',
  'C',
  'L',
  'mL-per-min',
  'g',
  'per-min',
] as const
export type InstrumentUnit = (typeof instrumentUnits)[number]

/** How an instrument stood against its own tolerance. */
export const toleranceStates = ['within', 'beyond', 'not-stated'] as const
export type ToleranceState = (typeof toleranceStates)[number]

/** Errors and uncertainty are in the unit of the instrument; null where not stated. */
export type Calibration = {
  readonly id: number
  readonly instrumentId: number
  readonly calibratedOn: string
  readonly dueOn: string
  readonly certificateNumber: string
  /** Who calibrated it; '' where not stated. */
  readonly laboratory: string
  readonly asFound: ToleranceState
  readonly asFoundError: number | null
  readonly asLeft: ToleranceState
  readonly asLeftError: number | null
  readonly expandedUncertainty: number | null
  readonly coverageFactor: number | null
  readonly note: string
}

/** Who or which place holds an instrument from a time on. */
export type InstrumentHolder = {
  readonly holder: string
  readonly byName: string
  readonly at: string
}

/** A photo of an instrument, or a document such as its calibration certificate. */
export type InstrumentFile = {
  readonly id: number
  readonly instrumentId: number
  readonly calibrationId: number | null
  readonly kind: 'photo' | 'file'
  readonly name: string
  readonly mediaType: string
  readonly sha256: string
  readonly byName: string
  readonly at: string
}

export type Instrument = {
  readonly id: number
  readonly kind: InstrumentKind
  /** The number painted on it: `L-02`. */
  readonly number: string
  readonly name: string
  readonly serial: string
  /** Lamps: the id in the lamp table. */
  readonly lampId: string | null
  /** Optical flats: largest departure from flat. */
  readonly flatToleranceUm: number | null
  /** Range and resolution as written on it or in its papers. */
  readonly range: string
  readonly resolution: string
  /** What the numbers below are in; '' where nothing is stated in numbers. */
  readonly unit: InstrumentUnit | ''
  readonly rangeFrom: number | null
  readonly rangeTo: number | null
  readonly resolutionStep: number | null
  /** Largest permissible error, half width. */
  readonly largestError: number | null
  readonly withdrawnOn: string | null
  /** Newest last. */
  readonly calibrations: readonly Calibration[]
}

export type NewInstrument = Omit<Instrument, 'id' | 'calibrations' | 'withdrawnOn'>

/** `left-beyond`: its newest calibration left it beyond its tolerance, or just found it so. */
export type CalibrationStatus =
  | 'in-calibration'
  | 'left-beyond'
  | 'overdue'
  | 'never-calibrated'
  | 'withdrawn'

/** What stood on the instrument's label on the day of use; kept with every reading. */
export type InstrumentUse = {
  readonly instrumentId: number
  readonly number: string
  readonly name: string
  readonly serial: string
  readonly kind: InstrumentKind
  readonly status: CalibrationStatus
  readonly dueOn: string | null
  readonly certificateNumber: string | null
  /** Absent where it needed none, or the record is older than exceptions. */
  readonly exception?: UsedException
}

/** The inspector's exception under which an instrument was used, as it stood then. */
export type UsedException = {
  readonly id: number
  readonly fault: UseFault
  readonly reason: string
  readonly allowedByName: string
  readonly allowedAt: string
}
