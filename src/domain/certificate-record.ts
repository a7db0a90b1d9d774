import {
  type CertificateRecord,
  type CertifiedRelease,
  type CertifiedSeal,
  type CertifiedTester,
  type CertifiedWorkOrder,
  certificateFormat,
} from './certificate.ts'
import { certifiedCorrections } from './certified-corrections.ts'
import { certifiedDoubts, certifiedExceptions, certifiedResults } from './certified-decisions.ts'
import { certifiedFaces } from './certified-face.ts'
import { certifiedFindings, certifiedParts } from './certified-findings.ts'
import { certifiedInstruments } from './certified-instruments.ts'
import { certifiedLappings } from './certified-lapping.ts'
import { certifiedMeasuredValues } from './certified-measured-values.ts'
import { certifiedStaticTests } from './certified-static-test.ts'
import { certifiedStrip } from './certified-strip-records.ts'
import { certifiedSurveys } from './certified-surveys.ts'
import { currentOnly } from './current-only.ts'
import { didTheWork } from './did-the-work.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import { overallVerdict } from './overall-verdict.ts'
import type { Decision } from './release.ts'
import type { Seal } from './seal.ts'
import type { WorkOrder } from './work-order.ts'
import type { Workshop } from './workshop.ts'

export type CertificateInput = {
  readonly evidence: Evidence
  /** Who releases: the decision as it is about to be stored. */
  readonly decision: Pick<Decision, 'byId' | 'byName' | 'byDepartment' | 'at'>
  readonly number: string
  readonly revision: number
  /** Needed from revision 1 on: why it replaces the one before. */
  readonly changeReason?: string
  readonly issuedAt: string
  readonly verifyUrl: string
  readonly workshop: Workshop
  /** What the inspector wrote on releasing; '' where nothing was to be acknowledged. */
  readonly acknowledgement: string
}

/** Everything the certificate says, from the record of the work order; the same each time. */
export function certificateRecord(input: CertificateInput): CertificateRecord {
  const { evidence, workshop } = input
  const { customer, equipment, limitSet, handOver } = evidence
  const faces = certifiedFaces(evidence)
  const staticTests = certifiedStaticTests(evidence)
  return {
    format: certificateFormat,
    number: input.number,
    revision: input.revision,
    changeReason: input.changeReason ?? '',
    issuedAt: input.issuedAt,
    verifyUrl: input.verifyUrl,
    isInvented: evidence.workOrder.isInvented,
    workshop: { name: workshop.name, address: workshop.address },
    customer: { name: customer.name, address: customer.address, contact: customer.contact },
    workOrder: certifiedWorkOrder(evidence.workOrder),
    equipment: equipment === null ? null : withoutIds(equipment),
    seal: certifiedSeal(evidence.seal),
    limitSet: {
      name: limitSet.name,
      version: limitSet.version,
      datedOn: limitSet.datedOn,
      note: limitSet.note,
      uncertaintyShareAtMost: limitSet.uncertaintyShareAtMost,
    },
    rule: ruleOf(evidence),
    results: certifiedResults(evidence),
    exceptions: certifiedExceptions(evidence),
    doubts: certifiedDoubts(evidence),
    faces,
    staticTests,
    measuredValues: certifiedMeasuredValues(evidence),
    findings: certifiedFindings(evidence),
    parts: certifiedParts(evidence),
    surveys: certifiedSurveys(evidence),
    lapping: certifiedLappings(evidence),
    ...certifiedStrip(evidence),
    instruments: certifiedInstruments(evidence),
    corrections: certifiedCorrections(evidence),
    testers: testers(evidence),
    handOver:
      handOver === null ? null : { byName: handOver.byName, at: handOver.at, note: handOver.note },
    release: releaseOf(input),
    verdict: overallVerdict(evidence),
  }
}

function ruleOf({ agreedRule }: Evidence) {
  const { rule, probability, reference, scope, byName, at } = agreedRule
  return { rule, probability, reference, scope, byName, at }
}

function certifiedWorkOrder(order: WorkOrder): CertifiedWorkOrder {
  return {
    number: order.number,
    customerOrder: order.customerOrder,
    receivedAt: order.receivedAt,
    reasonForRemoval: order.reasonForRemoval,
    decontamination: order.decontamination,
    lastFluid: order.lastFluid,
    sealedPressureKPa: optionalFigure(order.sealedPressureKPa, 'as-entered'),
    serviceTemperatureC: optionalFigure(order.serviceTemperatureC, 'as-entered'),
    shaftSpeedPerMin: optionalFigure(order.shaftSpeedPerMin, 'as-entered'),
  }
}

function withoutIds(equipment: NonNullable<Evidence['equipment']>) {
  const { tag, description, serviceFluid } = equipment
  return { tag, description, serviceFluid }
}

function certifiedSeal(seal: Seal): CertifiedSeal {
  const { serial, drawing, drawingRevision, arrangement, size } = seal
  const length = 'as-entered'
  return {
    serial,
    drawing,
    drawingRevision,
    arrangement,
    shaftDiameterMm: figure(seal.shaftDiameterMm, length),
    size,
    components: seal.components.map((one) => ({
      kind: one.kind,
      material: one.material,
      outerDiameterMm: optionalFigure(one.outerDiameterMm, length),
      innerDiameterMm: optionalFigure(one.innerDiameterMm, length),
      noseHeightMm: optionalFigure(one.noseHeightMm, length),
      minimumNoseHeightMm: optionalFigure(one.minimumNoseHeightMm, length),
    })),
  }
}

function testers(evidence: Evidence): readonly CertifiedTester[] {
  const did = new Map<string, CertifiedTester['did']>()
  const add = (name: string, kind: CertifiedTester['did'][number]['kind'], at: string) => {
    const known = did.get(name) ?? []
    const on = at.slice(0, 10)
    const isKnown = known.some((one) => one.kind === kind && one.on === on)
    did.set(name, isKnown ? known : [...known, { kind, on }])
  }
  for (const one of currentOnly(evidence.flatnessReadings)) {
    add(one.recordedByName, 'flatness', one.recordedAt)
  }
  for (const one of currentOnly(evidence.staticTests)) {
    add(one.recordedByName, 'static-test', one.recordedAt)
  }
  for (const one of currentOnly(evidence.measuredValues)) {
    add(one.recordedByName, 'measured-value', one.recordedAt)
  }
  for (const one of currentOnly(evidence.lapCycles)) {
    add(one.recordedByName, 'lap-cycle', one.recordedAt)
  }
  for (const one of currentOnly(evidence.wearTracks)) {
    add(one.recordedByName, 'wear-track', one.recordedAt)
  }
  for (const one of currentOnly(evidence.springChecks)) {
    add(one.recordedByName, 'spring-check', one.recordedAt)
  }
  for (const one of currentOnly(evidence.assemblies)) {
    add(one.recordedByName, 'assembly', one.recordedAt)
  }
  return [...did].map(([name, acts]) => ({ name, did: acts }))
}

function releaseOf({ evidence, decision, acknowledgement }: CertificateInput): CertifiedRelease {
  return {
    byName: decision.byName,
    byDepartment: decision.byDepartment,
    at: decision.at,
    acknowledgement,
    isIndependent: !didTheWork(evidence, decision.byId, evidence.handOver),
  }
}
