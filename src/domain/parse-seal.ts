import { confirmField, isConfirmed } from './confirmed.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'
import {
  arrangements,
  componentKinds,
  faceKinds,
  faceMaterials,
  type NewComponent,
  type NewSeal,
} from './seal.ts'
import { tradeWindow } from './trade-window.ts'

export const sealFields = [
  'serial',
  'drawing',
  'drawingRevision',
  'arrangement',
  'shaftDiameterMm',
  'size',
  'components',
] as const

export const sealTextLength = {
  serial: 60,
  drawing: 60,
  drawingRevision: 20,
  size: 60,
  material: 120,
} as const

/** What no confirmation can make possible: a shaft has a diameter, and fits into a hall. */
export const sealBounds = {
  shaftDiameterMm: { min: 0.1, max: 5000 },
  ringDiameterMm: { min: 0.1, max: 5000 },
  noseHeightMm: { min: 0.001, max: 500 },
} as const

export type ParsedSeal = Omit<NewSeal, 'customerId' | 'equipmentId'>

/**
 * Reads a seal with its components, each kind at most once and at least one of them a face.
 * Dimensions nobody has measured stay null.
 */
export function parseSeal(input: Input): Parsed<ParsedSeal> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...sealFields, confirmField)
  const shaft = [tradeWindow.shaftDiameterMm, sealBounds.shaftDiameterMm] as const
  return fields.finish({
    serial: fields.text('serial', sealTextLength.serial),
    drawing: fields.optionalText('drawing', sealTextLength.drawing),
    drawingRevision: fields.optionalText('drawingRevision', sealTextLength.drawingRevision),
    arrangement: fields.choice('arrangement', arrangements),
    shaftDiameterMm: fields.windowed('shaftDiameterMm', ...shaft),
    size: fields.optionalText('size', sealTextLength.size),
    components: parseComponents(fields),
  })
}

function parseComponents(fields: Fields): readonly NewComponent[] {
  const parts = fields.list('components', { min: 1, max: componentKinds.length })
  const components: NewComponent[] = []
  for (const part of parts) {
    const component = parseComponent(part)
    if (components.some((one) => one.kind === component.kind)) part.fault('kind', 'taken')
    components.push(component)
  }
  const hasFace = components.some((one) => isFaceKind(one.kind))
  if (fields.faults.length === 0 && !hasFace) {
    fields.fault('components', 'too-few', { min: 1, max: componentKinds.length })
  }
  return components
}

function parseComponent(part: Fields): NewComponent {
  part.only(
    'kind',
    'material',
    'outerDiameterMm',
    'innerDiameterMm',
    'noseHeightMm',
    'minimumNoseHeightMm',
  )
  const kind = part.choice('kind', componentKinds)
  const before = part.faults.length
  const outer = part.optionalDecimal('outerDiameterMm', sealBounds.ringDiameterMm)
  const inner = part.optionalDecimal('innerDiameterMm', sealBounds.ringDiameterMm)
  // An inner diameter alone could be anything's: it is only kept beside its outer one.
  if (inner !== null && part.faults.length === before) {
    if (outer === null) part.fault('outerDiameterMm', 'empty')
    else if (inner >= outer) part.fault('innerDiameterMm', 'inner-not-smaller')
  }
  return {
    kind,
    material: isFaceKind(kind)
      ? part.choice('material', faceMaterials)
      : part.optionalText('material', sealTextLength.material),
    outerDiameterMm: outer,
    innerDiameterMm: inner,
    noseHeightMm: part.optionalDecimal('noseHeightMm', sealBounds.noseHeightMm),
    minimumNoseHeightMm: part.optionalDecimal('minimumNoseHeightMm', sealBounds.noseHeightMm),
  }
}

function isFaceKind(kind: string): boolean {
  return faceKinds.some((one) => one === kind)
}
