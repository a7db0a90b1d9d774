import type { MeasuredCharacteristic } from './characteristic.ts'
import type { FaceState } from './face-state.ts'
import type { ReadingCondition } from './flatness.ts'
import type { InstrumentUse } from './instrument.ts'
import type { Uncertainty } from './uncertainty.ts'

/** Units that lengths are typed in; stored in µm. */
export const lengthUnits = ['um', 'mm', 'in', 'uin', 'graduations'] as const
export type LengthUnit = (typeof lengthUnits)[number]

/** One reading with the text as typed. */
export type ValueReading = { readonly um: number; readonly typed: string }

export type NewMeasuredValue = {
  readonly workOrderId: number
  readonly characteristic: MeasuredCharacteristic
  /** The component it was read on; null for what belongs to the machine. */
  readonly componentId: number | null
  readonly condition: ReadingCondition
  readonly instrumentId: number
  readonly unit: LengthUnit
  /** Repeats of the same figure; the result is their mean. */
  readonly readings: readonly ValueReading[]
  /** Bore of the chamber, where a limit is given per millimetre of it. */
  readonly sizeMm: number | null
  readonly budgetInput: MeasuredBudgetInput
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

/** Which way a profile runs over a face. */
export const traceDirections = ['across-lay', 'along-lay', 'radial', 'around', 'no-lay'] as const
export type TraceDirection = (typeof traceDirections)[number]

/** What only the reader knows about the set-up; null where it was not stated. */
export type MeasuredBudgetInput = {
  /** Between the lever of an indicator and the surface; 0 for a dial. */
  readonly leverAngleDeg: number | null
  /** Roughness: cut-off of the profile. */
  readonly cutOffMm: number | null
  /** Roughness: which way it was traced; absent in records older than the question. */
  readonly traceDirection?: TraceDirection | null
  /** Roughness: radius of the stylus; absent in records older than the question. */
  readonly tipRadiusUm?: number | null
  /** Roughness: over which Ra was taken; absent in records older than the question. */
  readonly evaluationLengthMm?: number | null
  /** Roughness: how the face was, as its reader says; absent in records older than the question. */
  readonly faceState?: FaceState | null
  /** Half width of the temperature's departure from 20 °C. */
  readonly temperatureHalfWidthK: number | null
  /** Standard uncertainty of what the instrument was set on. */
  readonly settingStandardUncertaintyUm: number | null
}

export type MeasuredValue = NewMeasuredValue & {
  readonly id: number
  readonly valueUm: number
  readonly uncertainty: Uncertainty
  readonly method: string
  readonly instrument: InstrumentUse
  /** That took the float out of a face sweep; null where there was none, and in older records. */
  readonly secondInstrument: InstrumentUse | null
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const measuredValueBounds = {
  readingCount: { min: 1, max: 24 },
  /** What is read here has no sign: the total movement of a needle, a height, a roughness. */
  readingUm: { min: 0, max: 1e6 },
  sizeMm: { min: 1, max: 5000 },
  leverAngleDeg: { min: 0, max: 60 },
  cutOffMm: { min: 0.01, max: 25 },
  /** Usual: 2, 5 and 10 µm (ISO 3274, from memory). */
  tipRadiusUm: { min: 0.1, max: 100 },
  evaluationLengthMm: { min: 0.02, max: 200 },
  temperatureHalfWidthK: { min: 0, max: 100 },
  settingStandardUncertaintyUm: { min: 0, max: 1000 },
} as const
