import type { CertificateRecord, CertifiedComponent } from '../../src/domain/certificate.ts'
import type { ComponentKind } from '../../src/domain/seal.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Block, Fact } from '../document.ts'
import { figureOr, orElse } from './or-else.ts'
import { printDay } from './print-when.ts'

const { item: words, ...common } = certificateWords

/** The seal, whose it is, when it came and was tested, and what the customer stated. */
export function itemBlocks(record: CertificateRecord): readonly Block[] {
  return [
    { kind: 'heading', text: words.heading },
    { kind: 'facts', facts: [...sealFacts(record), ...orderFacts(record), ...stated(record)] },
    { kind: 'paragraph', text: words.stated, style: 'small' },
    { kind: 'subheading', text: words.components },
    {
      kind: 'table',
      columns: words.componentColumns.map((title, index) => ({
        title,
        share: [22, 34, 24, 26][index] ?? 1,
      })),
      rows: record.seal.components.map((one) => ({ cells: componentCells(one) })),
    },
  ]
}

function sealFacts({ seal }: CertificateRecord): readonly Fact[] {
  return [
    { label: words.serial, value: seal.serial },
    { label: words.arrangement, value: words.arrangements[seal.arrangement] },
    { label: words.drawing, value: printDrawing(seal.drawing, seal.drawingRevision) },
    { label: words.shaft, value: common.withUnit(seal.shaftDiameterMm.text, common.mm) },
    { label: words.size, value: orElse(seal.size, common.notStated) },
  ]
}

function orderFacts(record: CertificateRecord): readonly Fact[] {
  const { customer, workOrder, workshop } = record
  return [
    { label: words.customer, value: customer.name },
    { label: words.customerOrder, value: orElse(workOrder.customerOrder, common.notStated) },
    { label: words.address, value: orElse(customer.address, common.notStated) },
    { label: words.contact, value: orElse(customer.contact, common.notStated) },
    { label: words.received, value: printDay(workOrder.receivedAt) },
    { label: words.performed, value: performed(record) },
    { label: words.place, value: words.placeOf(workshop.name, workshop.address) },
  ]
}

function stated({ equipment, workOrder }: CertificateRecord): readonly Fact[] {
  const { notStated } = common
  return [
    { label: words.position, value: orElse(equipment?.tag ?? '', notStated) },
    { label: words.equipment, value: orElse(equipment?.description ?? '', notStated) },
    { label: words.service, value: orElse(equipment?.serviceFluid ?? '', notStated) },
    { label: words.removal, value: orElse(workOrder.reasonForRemoval, notStated) },
    { label: words.lastFluid, value: orElse(workOrder.lastFluid, notStated) },
    {
      label: words.decontamination,
      value: words.decontaminationStates[workOrder.decontamination],
    },
    { label: words.pressure, value: figureOr(workOrder.sealedPressureKPa, common.kPa, notStated) },
    {
      label: words.temperature,
      value: figureOr(workOrder.serviceTemperatureC, common.celsius, notStated),
    },
    {
      label: words.speed,
      value: figureOr(workOrder.shaftSpeedPerMin, common.perMinute, notStated),
    },
  ]
}

/** First and last day on which something in this certificate was recorded. */
function performed({ testers }: CertificateRecord): string {
  const days = testers.flatMap((one) => one.did.map((act) => act.on)).sort()
  const [first] = days
  return first === undefined ? common.notMeasured : words.days(first, days.at(-1) ?? first)
}

/** A drawing with its revision. */
export function printDrawing(drawing: string, revision: string): string {
  if (drawing.trim() === '') return common.notStated
  return common.drawingRevision(drawing, orElse(revision, common.notStated))
}

/** The plain word for a face material; what was written for any other part. */
export function printMaterial(component: {
  readonly kind: ComponentKind
  readonly material: string
}): string {
  const materials: Readonly<Record<string, string>> = words.materials
  const isFace = component.kind === 'rotating-face' || component.kind === 'stationary-seat'
  const known = isFace ? materials[component.material] : undefined
  return orElse(known ?? component.material, common.notStated)
}

function componentCells(component: CertifiedComponent) {
  const { outerDiameterMm, innerDiameterMm, noseHeightMm, minimumNoseHeightMm } = component
  const isUnmeasured = outerDiameterMm === null && innerDiameterMm === null
  const diameters = isUnmeasured
    ? common.notMeasured
    : words.diameters(
        outerDiameterMm?.text ?? common.notMeasured,
        innerDiameterMm?.text ?? common.notMeasured,
      )
  const nose =
    noseHeightMm === null
      ? common.notMeasured
      : words.nose(noseHeightMm.text, minimumNoseHeightMm?.text ?? common.notStated)
  return [
    { lines: [{ text: words.componentKinds[component.kind] }] },
    { lines: [{ text: printMaterial(component) }] },
    { lines: [{ text: diameters }] },
    { lines: [{ text: nose }] },
  ]
}
