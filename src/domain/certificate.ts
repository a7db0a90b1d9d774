import type { LampId } from '../science/optics/lamps.ts'
import type { BandPattern, ReadingCondition } from './flatness.ts'
import type { CalibrationStatus, InstrumentKind } from './instrument.ts'
import type { JudgedReason } from './judged.ts'
import type { LimitBasis } from './limit-set.ts'
import type { Arrangement, ComponentKind, FaceKind } from './seal.ts'
import type { StaticTestTyped, TestSection } from './static-test.ts'
import type { DecontaminationState } from './work-order.ts'
import type { Workshop } from './workshop.ts'

/** A row of the store: one issued certificate. `sha256` is that of the PDF as issued. */
export type Certificate = {
  readonly id: number
  /** `C-2026-0042-K7QX3M`; unique together with the revision. */
  readonly number: string
  /** 0 for the first issue. */
  readonly revision: number
  readonly workOrderId: number
  readonly decisionId: number
  readonly customerId: number
  readonly record: CertificateRecord
  readonly sha256: string
  readonly issuedAt: string
}

export const certificateFormat = { name: 'ringproof-certificate', version: 1 } as const

/**
 * Everything that a certificate certifies, complete in itself: the PDF is drawn from it and from
 * nothing else, so it can be drawn and recomputed years later. No ids of the store in it.
 */
export type CertificateRecord = {
  readonly format: typeof certificateFormat
  readonly number: string
  readonly revision: number
  /** Why this revision replaces the one before; '' for revision 0. */
  readonly changeReason: string
  readonly issuedAt: string
  readonly verifyUrl: string
  readonly isInvented: boolean
  readonly workshop: Workshop
  readonly customer: CertifiedCustomer
  readonly workOrder: CertifiedWorkOrder
  readonly equipment: CertifiedEquipment | null
  readonly seal: CertifiedSeal
  readonly limitSet: {
    readonly name: string
    readonly version: number
    readonly datedOn: string
    readonly note: string
  }
  readonly faces: readonly CertifiedFace[]
  readonly staticTests: readonly CertifiedStaticTest[]
  readonly instruments: readonly CertifiedInstrument[]
  readonly corrections: readonly CertifiedCorrection[]
  readonly testers: readonly CertifiedTester[]
  readonly handOver: { readonly byName: string; readonly at: string; readonly note: string } | null
  readonly release: CertifiedRelease
  /**
   * Over each face as left and the newest static test of each section: fail where one fails,
   * open where one has nothing to be judged by.
   */
  readonly verdict: CertifiedVerdict
}

/** A number as computed, and as printed: what was printed is stored with the record. */
export type Figure = { readonly value: number; readonly text: string }

/** `open`: there was nothing to compare with. */
export type CertifiedVerdict = 'pass' | 'fail' | 'open'

export type CertifiedCustomer = {
  readonly name: string
  readonly address: string
  readonly contact: string
}

/** The order as received. What the customer stated is null or '' where nothing was stated. */
export type CertifiedWorkOrder = {
  readonly number: string
  readonly customerOrder: string
  readonly receivedAt: string
  readonly reasonForRemoval: string
  readonly decontamination: DecontaminationState
  readonly lastFluid: string
  readonly sealedPressureKPa: Figure | null
  readonly serviceTemperatureC: Figure | null
  readonly shaftSpeedPerMin: Figure | null
}

export type CertifiedEquipment = {
  readonly tag: string
  readonly description: string
  readonly serviceFluid: string
}

export type CertifiedSeal = {
  readonly serial: string
  readonly drawing: string
  readonly drawingRevision: string
  readonly arrangement: Arrangement
  readonly shaftDiameterMm: Figure
  readonly size: string
  readonly components: readonly CertifiedComponent[]
}

export type CertifiedComponent = {
  readonly kind: ComponentKind
  readonly material: string
  readonly outerDiameterMm: Figure | null
  readonly innerDiameterMm: Figure | null
  readonly noseHeightMm: Figure | null
  readonly minimumNoseHeightMm: Figure | null
}

/** A limit in the unit of its result, as written at its source, with how well it is founded. */
export type CertifiedLimit = {
  readonly upper: Figure
  /** Flatness only. */
  readonly upperUin: Figure | null
  /** Leak rate only: mL/min at 20 °C and 101.325 kPa. */
  readonly upperMlPerMin: Figure | null
  readonly asWritten: string
  readonly withinS: number | null
  readonly volumeAtMostL: number | null
  readonly basis: LimitBasis
  readonly source: string
}

/** One result beside its limit, and why the verdict is what it is. */
export type CertifiedJudgement = {
  readonly verdict: CertifiedVerdict
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
  /** Valid readings that a later one of the same condition has overtaken, oldest first. */
  readonly earlier: readonly CertifiedFlatness[]
}

export type CertifiedFlatness = CertifiedJudgement & {
  readonly condition: ReadingCondition
  readonly pattern: BandPattern
  readonly form: string
  readonly ringCentre: 'high' | 'low' | null
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

/** An instrument with the state of its calibration on the days it was used. */
export type CertifiedInstrument = {
  readonly kind: InstrumentKind
  readonly number: string
  readonly name: string
  readonly certificateNumber: string | null
  readonly dueOn: string | null
  readonly status: CalibrationStatus
  readonly usedOn: readonly string[]
}

/** A record that took another's place: both values, who, when and why. */
export type CertifiedCorrection = {
  readonly subject:
    | { readonly kind: 'flatness'; readonly face: FaceKind; readonly condition: ReadingCondition }
    | { readonly kind: 'static-test'; readonly section: TestSection }
  readonly was: CertifiedValue
  readonly became: CertifiedValue
  readonly reason: string
  readonly byName: string
  readonly at: string
}

/** The value of a corrected record: flatness in µm, leak rate in Pa·m³/s; null: unreadable. */
export type CertifiedValue = { readonly figure: Figure | null; readonly recordedAt: string }

export type CertifiedTester = {
  readonly name: string
  readonly did: readonly { readonly kind: 'flatness' | 'static-test'; readonly on: string }[]
}

export type CertifiedRelease = {
  readonly byName: string
  readonly byDepartment: string
  readonly at: string
  /** What the inspector wrote on releasing; names overdue instruments where there were any. */
  readonly acknowledgement: string
  /** True: recorded none of the results and did not hand the order over. */
  readonly isIndependent: boolean
}
