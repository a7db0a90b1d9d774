import type { LampId } from '../science/optics/lamps.ts'
import type { PhotoCaution } from '../science/photo/photo-reading.ts'
import type { AnnularSurface } from '../science/surface/annular-surface.ts'
import type { ReadingCondition, RecordedPattern } from './flatness.ts'
import type { JudgedReason, Verdict } from './judged.ts'
import type { LimitBasis, PerMmOf } from './limit-set.ts'
import type { FaceKind } from './seal.ts'
import type { LeakPlace, StaticTestTyped, TestSection } from './static-test.ts'
import type { UnreadableCause } from './unreadable-cause.ts'
import type { WholeFaceKind } from './whole-face.ts'
import type { OverallVerdict } from './worst-verdict.ts'

/** A number as computed, and as printed: what was printed is stored with the record. */
export type Figure = { readonly value: number; readonly text: string }

/** Over several results; `open`: there was nothing to compare one with. */
export type CertifiedVerdict = OverallVerdict

/** A limit in the unit of its result, as written at its source, with how well it is founded. */
export type CertifiedLimit = {
  /** Null where the limit is a lower one; a limit per millimetre is not multiplied out. */
  readonly upper: Figure | null
  /** Flatness only. */
  readonly upperUin: Figure | null
  /** Leak rate only: mL/min at 20 °C and 101.325 kPa. */
  readonly upperMlPerMin: Figure | null
  readonly asWritten: string
  readonly withinS: number | null
  readonly volumeAtMostL: number | null
  readonly startAtLeastKPaGauge: Figure | null
  readonly basis: LimitBasis
  readonly source: string
  /** Absent in records of version 1. */
  readonly edition?: string
  readonly clause?: string
  readonly lower?: Figure | null
  readonly perMmOf?: PerMmOf | null
}

/** One result beside its limit, and why the verdict is what it is. */
export type CertifiedJudgement = {
  readonly verdict: Verdict
  readonly why: JudgedReason
  readonly limit: CertifiedLimit | null
}

export type CertifiedFace = {
  readonly kind: FaceKind
  readonly material: string
  readonly outerDiameterMm: Figure | null
  readonly innerDiameterMm: Figure | null
  /** What its flatness is judged by, read or not. */
  readonly limit: CertifiedLimit | null
  /** The newest valid reading before and after the work; null: not measured. */
  readonly asFound: CertifiedFlatness | null
  readonly asLeft: CertifiedFlatness | null
  /** Counts of lines that stand beside a reading of the whole face; absent where there are none. */
  readonly beside?: readonly CertifiedFlatness[]
  /** Valid readings that a later one of the same condition has overtaken, oldest first. */
  readonly earlier: readonly CertifiedFlatness[]
}

export type CertifiedFlatness = CertifiedJudgement & {
  readonly condition: ReadingCondition
  readonly pattern: RecordedPattern
  readonly form: string
  readonly ringCentre: 'high' | 'low' | null
  /** Absent in records that didn't ask. */
  readonly unreadableCause?: UnreadableCause | null
  /** Of a reading of the whole face; absent for counted bands. */
  readonly wholeFace?: CertifiedWholeFace
  /** Number of the lap cycle after which it was read; absent where there was none. */
  readonly afterCycle?: number
  readonly directions: readonly {
    readonly directionDeg: number
    readonly bands: number
    readonly bandsTyped: string
  }[]
  /** Null for a face that could not be read. */
  readonly bands: Figure | null
  readonly flatnessUm: Figure | null
  readonly flatnessUin: Figure | null
  readonly expandedUncertaintyUm: Figure | null
  readonly coverageFactor: number
  /** Null for a wavelength that is not in the lamp table. */
  readonly lampId: LampId | null
  readonly wavelengthNm: Figure
  readonly bandHeightUm: Figure
  readonly viewingAngleDeg: Figure
  readonly soakMin: Figure | null
  readonly temperatureC: Figure | null
  readonly note: string
  readonly method: string
  readonly lampNumber: string
  readonly flatNumber: string
  readonly recordedByName: string
  readonly recordedAt: string
}

/** What a certificate says of a face that was read as a whole, its map included. */
export type CertifiedWholeFace = {
  readonly kind: WholeFaceKind
  /** Heights in um: the drawing is made from it; null where no surface was fitted. */
  readonly surface: AnnularSurface | null
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
  /** Whether it is known which way up the map is. */
  readonly isSignKnown: boolean
  readonly minimumZoneUm: Figure | null
  readonly rmsUm: Figure | null
  /** Outer edge less inner edge; null where it is not known which way up. */
  readonly taperUm: Figure | null
  /** Its size, where it is not known which way up; absent otherwise, and in older records. */
  readonly taperSizeUm?: Figure
  readonly lobes: readonly {
    readonly order: number
    readonly amplitudeUm: Figure
    readonly phaseDeg: Figure
  }[]
  /** How much of the land was seen and explained, in percent; absent where that isn't known. */
  readonly seenPercent?: Figure
  /** Largest departures of a band from its line, in bands; of a grid of lines alone. */
  readonly lineGridBands?: { readonly oneWay: Figure; readonly otherWay: Figure }
  readonly cautions: readonly PhotoCaution[]
  /** The workshop keeps the photograph that it was read from. */
  readonly hasPhotograph: boolean
}

export type CertifiedStaticTest = {
  readonly section: TestSection
  /** False where a later test of the same section has overtaken it. */
  readonly isNewest: boolean
  readonly startPressureKPaAbs: Figure
  readonly endPressureKPaAbs: Figure
  readonly startPressureKPaGauge: Figure
  readonly barometerKPa: Figure
  readonly startTemperatureC: Figure
  readonly endTemperatureC: Figure
  readonly durationS: Figure
  readonly stabilisationS: Figure | null
  /** Absent in certificates older than the question. */
  readonly leakPlace?: LeakPlace | null
  /** The known volume that the test volume was found from; absent in older certificates. */
  readonly expandedFromL?: Figure | null
  readonly volumeL: Figure
  readonly startedAt: string
  readonly typed: StaticTestTyped
  readonly pressureDropKPa: Figure
  readonly drop: CertifiedJudgement
  /** As gas at the temperature that limits of leak rate are written for. */
  readonly leakPaM3PerS: Figure
  readonly leakMlPerMin: Figure
  readonly leakTemperatureC: Figure
  readonly leak: CertifiedJudgement
  /** What the same readings give when the temperatures are left out. */
  readonly uncompensatedPaM3PerS: Figure
  readonly note: string
  readonly method: string
  readonly gaugeNumber: string
  readonly thermometerNumber: string | null
  readonly recordedByName: string
  readonly recordedAt: string
}
