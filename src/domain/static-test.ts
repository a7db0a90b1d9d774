import type { InstrumentUse } from './instrument.ts'
import type { Uncertainty } from './uncertainty.ts'
import type { VolumeExpansion } from './volume-expansion.ts'

export const pressureUnits = ['kPa', 'bar', 'mbar', 'psi', 'MPa'] as const
export type PressureUnit = (typeof pressureUnits)[number]

export const pressureReferences = ['gauge', 'absolute'] as const
export type PressureReference = (typeof pressureReferences)[number]

/** Which part of the seal was under pressure. */
export const testSections = ['whole', 'inboard', 'outboard', 'gland'] as const
export type TestSection = (typeof testSections)[number]

/** Where gas was seen to come out, or not; a fitting of the rig is no leak of the seal. */
export const leakPlaces = [
  'none-seen',
  'between-faces',
  'at-shaft',
  'at-housing',
  'at-rig',
  'not-found',
] as const
export type LeakPlace = (typeof leakPlaces)[number]

/** Text as typed, kept beside the numbers it was read as. */
export type StaticTestTyped = {
  readonly startPressure: string
  readonly endPressure: string
  readonly pressureUnit: PressureUnit
  readonly pressureReference: PressureReference
  readonly barometer: string
}

export type NewStaticTest = {
  readonly workOrderId: number
  readonly section: TestSection
  readonly typed: StaticTestTyped
  readonly startPressureKPaAbs: number
  readonly endPressureKPaAbs: number
  readonly barometerKPa: number
  readonly startTemperatureC: number
  readonly endTemperatureC: number
  /** The leak rate is that of gas at this temperature. */
  readonly referenceTemperatureC: number
  readonly durationS: number
  /** When the hold began, as the technician states it; RFC 3339. */
  readonly startedAt: string
  readonly volumeL: number
  /** How the volume was found; null where it was stated, and in records older than the question. */
  readonly expansion: VolumeExpansion | null
  readonly stabilisationS: number | null
  /** Null where nobody looked, and in records older than the question. */
  readonly leakPlace: LeakPlace | null
  readonly gaugeInstrumentId: number
  readonly thermometerInstrumentId: number | null
  /** The calibrated volume that it was held in; null where the volume was stated. */
  readonly volumeInstrumentId: number | null
  /** Null in records older than budgets. */
  readonly budgetInput: StaticTestBudgetInput | null
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type StaticTest = NewStaticTest & {
  readonly id: number
  readonly pressureDropKPa: number
  readonly leakPaM3PerS: number
  readonly uncompensatedPaM3PerS: number
  /** Null in records older than budgets, and where nothing is known to make one of. */
  readonly leakUncertainty: Uncertainty | null
  readonly dropUncertainty: Uncertainty | null
  readonly method: string
  readonly gauge: InstrumentUse
  readonly thermometer: InstrumentUse | null
  readonly volume: InstrumentUse | null
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

/**
 * Standard uncertainties that the tester states instead of what follows from the instruments;
 * null: from the instruments.
 */
export type StaticTestBudgetInput = {
  readonly volumeRelative: number | null
  readonly pressurePa: number | null
  readonly temperatureK: number | null
  readonly timeS: number | null
  /** Steps of the displays, as a program states them; absent: from the instruments. */
  readonly resolutionPa?: number
  readonly resolutionK?: number
}

export const noStaticTestBudgetInput: StaticTestBudgetInput = {
  volumeRelative: null,
  pressurePa: null,
  temperatureK: null,
  timeS: null,
}

export const staticTestBounds = {
  durationS: { min: 1, max: 604_800 },
  volumeL: { min: 0.001, max: 10_000 },
  /** What no confirmation can make possible: what the gas law is not asked about. */
  temperatureC: { min: -270, max: 2000 },
  barometerKPa: { min: 60, max: 110 },
  pressureKPaAbs: { min: 0, max: 100_000 },
  stabilisationS: { min: 0, max: 604_800 },
} as const
