import type {
  CertifiedDoubt,
  CertifiedException,
  CertifiedResult,
  CertifiedRule,
} from './certified-decision.ts'
import type { CertifiedFinding, CertifiedPart } from './certified-findings.ts'
import type { CertifiedLapping } from './certified-lapping.ts'
import type { CertifiedMeasuredValue } from './certified-measured-value.ts'
import type {
  CertifiedFace,
  CertifiedStaticTest,
  CertifiedVerdict,
  Figure,
} from './certified-results.ts'
import type { CertifiedAssembly, CertifiedSpring, CertifiedTrack } from './certified-strip.ts'
import type { CertifiedSurvey } from './certified-survey.ts'
import type { Characteristic } from './characteristic.ts'
import type { ReadingCondition } from './flatness.ts'
import type { CalibrationStatus, InstrumentKind } from './instrument.ts'
import type { Arrangement, ComponentKind, FaceKind } from './seal.ts'
import type { TestSection } from './static-test.ts'
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

export const certificateFormat = { name: 'ringproof-certificate', version: 2 } as const

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
    /** Above this share of a limit an uncertainty decides nothing; null in older records. */
    readonly uncertaintyShareAtMost: number | null
  }
  /** How results were compared with limits; agreed before measuring. */
  readonly rule: CertifiedRule
  /** What counts for the release, each with its budget and decision; none in version 1. */
  readonly results: readonly CertifiedResult[]
  readonly exceptions: readonly CertifiedException[]
  readonly doubts: readonly CertifiedDoubt[]
  readonly faces: readonly CertifiedFace[]
  readonly staticTests: readonly CertifiedStaticTest[]
  /** As found, as left and overtaken; early records of version 2 know only what counts. */
  readonly measuredValues: readonly CertifiedMeasuredValue[]
  /** What was seen when the seal was stripped; absent in records from before it was kept. */
  readonly findings?: readonly CertifiedFinding[]
  /** What became of its parts; absent as above. */
  readonly parts?: readonly CertifiedPart[]
  /** Swept with an indicator, with plots; absent in records from before there were any. */
  readonly surveys?: readonly CertifiedSurvey[]
  /** Of the faces that were lapped; none in records from before there was a log. */
  readonly lapping: readonly CertifiedLapping[]
  /** Absent where none was read, and in records from before there were any; so are the two below. */
  readonly wearTracks?: readonly CertifiedTrack[]
  readonly springs?: readonly CertifiedSpring[]
  readonly assembly?: CertifiedAssembly
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

/** An instrument with the state of its calibration on the days it was used. */
export type CertifiedInstrument = {
  readonly kind: InstrumentKind
  readonly number: string
  readonly name: string
  /** '' where it has none. */
  readonly serial: string
  readonly certificateNumber: string | null
  readonly dueOn: string | null
  readonly status: CalibrationStatus
  readonly usedOn: readonly string[]
  /** Under which it was used on these days; absent in records that didn't keep it here. */
  readonly exception?: CertifiedException | null
}

/** A record that took another's place: both values, who, when and why. */
export type CertifiedCorrection = {
  readonly subject:
    | { readonly kind: 'flatness'; readonly face: FaceKind; readonly condition: ReadingCondition }
    | { readonly kind: 'static-test'; readonly section: TestSection }
    | {
        readonly kind: 'measured-value'
        readonly characteristic: Characteristic
        readonly condition: ReadingCondition
      }
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
  readonly did: readonly {
    readonly kind:
      | 'flatness'
      | 'static-test'
      | 'measured-value'
      | 'lap-cycle'
      | 'wear-track'
      | 'spring-check'
      | 'assembly'
    readonly on: string
  }[]
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
