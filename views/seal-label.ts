import { componentKinds } from '../src/domain/seal.ts'
import { words } from './words/en.ts'

const w = words.customers.seal
const labels: Readonly<Record<string, string>> = {
  serial: w.serial,
  drawing: w.drawing,
  drawingRevision: w.drawingRevision,
  size: w.size,
  equipmentId: w.position,
  arrangement: w.arrangement,
  shaftDiameterMm: w.shaft,
  material: w.material,
  outerDiameterMm: w.outer,
  innerDiameterMm: w.inner,
  noseHeightMm: w.nose,
  minimumNoseHeightMm: w.leastNose,
}

/** What a field of the seal's form is called: `Stationary seat, outer diameter`. */
export function sealLabel(field: string): string | undefined {
  const [, place, name = field] = /^components\[(\d+)\]\.(\w+)$/.exec(field) ?? []
  const label = labels[name]
  const kind = place === undefined ? undefined : componentKinds[Number(place)]
  if (kind === undefined || label === undefined) return label
  return `${words.trade.componentKind[kind]}, ${label.toLowerCase()}`
}
