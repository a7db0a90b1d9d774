export const instrumentKinds = ['lamp', 'optical-flat', 'pressure-gauge', 'thermometer'] as const
export type InstrumentKind = (typeof instrumentKinds)[number]

export type Calibration = {
  readonly id: number
  readonly instrumentId: number
  readonly calibratedOn: string
  readonly dueOn: string
  readonly certificateNumber: string
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
  readonly range: string
  readonly resolution: string
  readonly withdrawnOn: string | null
  /** Newest last. */
  readonly calibrations: readonly Calibration[]
}

export type NewInstrument = Omit<Instrument, 'id' | 'calibrations' | 'withdrawnOn'>

export type CalibrationStatus = 'in-calibration' | 'overdue' | 'never-calibrated' | 'withdrawn'

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
}
