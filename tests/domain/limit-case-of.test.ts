import { expect, test } from 'vitest'
import { limitCaseOf } from '../../src/domain/limit-case-of.ts'

const none = { sealId: 1, noseHeightMm: null, minimumNoseHeightMm: null }
const seal = {
  shaftDiameterMm: 50,
  components: [
    {
      ...none,
      id: 7,
      kind: 'rotating-face' as const,
      material: 'carbon-graphite',
      outerDiameterMm: 66,
      innerDiameterMm: 52,
    },
    {
      ...none,
      id: 8,
      kind: 'stationary-seat' as const,
      material: 'alumina',
      outerDiameterMm: null,
      innerDiameterMm: null,
    },
  ],
}
const workOrder = { sealedPressureKPa: 2400, service: 'slurry' as const, shaftSpeedPerMin: 2950 }

test('a face brings its own material, kind and diameter', () => {
  expect(limitCaseOf({ seal, workOrder, componentId: 7, boreMm: null })).toEqual({
    faceMaterial: 'carbon-graphite',
    componentKind: 'rotating-face',
    service: 'slurry',
    diameterMm: 66,
    pressureKPa: 2400,
    speedPerMin: 2950,
    sizesMm: { bore: null, shaft: 50, face: 66 },
  })
})

test('a face of unknown diameter does not borrow the shaft’s', () => {
  const of = limitCaseOf({ seal, workOrder, componentId: 8, boreMm: null })
  expect(of).toMatchObject({ diameterMm: null, sizesMm: { face: null, shaft: 50 } })
})

test('the machine and the seal as a whole bring the shaft, and no material', () => {
  expect(limitCaseOf({ seal, workOrder, componentId: null, boreMm: 120 })).toMatchObject({
    faceMaterial: null,
    componentKind: null,
    diameterMm: 50,
    sizesMm: { bore: 120, shaft: 50, face: null },
  })
})

test('a service that was not stated is not known, and neither is a pressure', () => {
  const unstated = {
    sealedPressureKPa: null,
    service: 'not-stated' as const,
    shaftSpeedPerMin: null,
  }
  const of = limitCaseOf({ seal, workOrder: unstated, componentId: 7, boreMm: null })
  expect(of).toMatchObject({ service: null, pressureKPa: null, speedPerMin: null })
})
