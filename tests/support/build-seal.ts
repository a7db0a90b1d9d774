import type { Component, Seal } from '../../src/domain/seal.ts'

export function buildComponent(changes: Partial<Component> = {}): Component {
  return {
    id: 11,
    sealId: 1,
    kind: 'rotating-face',
    material: 'carbon-graphite',
    outerDiameterMm: null,
    innerDiameterMm: null,
    noseHeightMm: null,
    minimumNoseHeightMm: null,
    ...changes,
  }
}

/** A seal with its two faces and nothing else: rotating face 11, stationary seat 12. */
export function buildSeal(changes: Partial<Seal> = {}): Seal {
  return {
    id: 1,
    customerId: 1,
    equipmentId: null,
    serial: 'S-1',
    drawing: '',
    drawingRevision: '',
    arrangement: 'single',
    shaftDiameterMm: 50,
    size: '',
    components: [
      buildComponent(),
      buildComponent({
        id: 12,
        kind: 'stationary-seat',
        material: 'silicon-carbide-sintered',
      }),
    ],
    ...changes,
  }
}
