import { describe, expect, test } from 'vitest'
import { parseSeal } from '../../src/domain/parse-seal.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const face = { kind: 'rotating-face', material: 'carbon-graphite' }
const least = { serial: 'S-1', arrangement: 'single', shaftDiameterMm: '50', components: [face] }

test('reads the least seal: what nobody measured stays null', () => {
  expect(accepted(parseSeal(least))).toEqual({
    serial: 'S-1',
    drawing: '',
    drawingRevision: '',
    arrangement: 'single',
    shaftDiameterMm: 50,
    size: '',
    components: [
      {
        kind: 'rotating-face',
        material: 'carbon-graphite',
        outerDiameterMm: null,
        innerDiameterMm: null,
        noseHeightMm: null,
        minimumNoseHeightMm: null,
      },
    ],
  })
})

test('refuses each missing field of the least seal', () => {
  expect(faultsOf(parseSeal({}))).toEqual([
    'serial empty',
    'arrangement empty',
    'shaftDiameterMm empty',
    'components empty',
  ])
})

describe('shaft diameter', () => {
  const withShaft = (shaftDiameterMm: unknown, confirmBeyondWindow?: unknown) =>
    faultsOf(parseSeal({ ...least, shaftDiameterMm, confirmBeyondWindow }))

  test('is accepted from 5 to 500 mm', () => {
    expect(withShaft('5')).toEqual([])
    expect(withShaft(500)).toEqual([])
  })

  test('is asked about beyond, and stands once confirmed by yes or true', () => {
    expect(withShaft('4.99')).toEqual(['shaftDiameterMm beyond-window'])
    expect(withShaft('501', 'no')).toEqual(['shaftDiameterMm beyond-window'])
    expect(withShaft('501', 'yes')).toEqual([])
    expect(withShaft(501, true)).toEqual([])
  })

  test('can never be zero or negative', () => {
    expect(withShaft('0', 'yes')).toEqual(['shaftDiameterMm below'])
    expect(withShaft('-50', 'yes')).toEqual(['shaftDiameterMm below'])
  })
})

describe('components', () => {
  const withComponents = (...components: unknown[]) => faultsOf(parseSeal({ ...least, components }))

  test('take each of the five kinds once', () => {
    const five = [
      face,
      { kind: 'rotating-secondary', material: 'FKM 75' },
      { kind: 'spring' },
      { kind: 'stationary-seat', material: 'alumina' },
      { kind: 'stationary-secondary' },
    ]
    expect(withComponents(...five)).toEqual([])
    expect(withComponents(face, { kind: 'spring' }, { kind: 'spring' })).toEqual([
      'components[2].kind taken',
    ])
    expect(withComponents(...five, { kind: 'spring' })).toEqual(['components too-many'])
  })

  test('are refused without any face, since nothing could then be read', () => {
    expect(withComponents({ kind: 'spring' })).toEqual(['components too-few'])
  })

  test('ask a face for its material from the list, the rest for none', () => {
    expect(withComponents({ kind: 'stationary-seat' })).toEqual(['components[0].material empty'])
    expect(withComponents({ kind: 'rotating-face', material: 'wood' })).toEqual([
      'components[0].material not-a-choice',
    ])
  })

  test('name the path of a faulty dimension', () => {
    expect(withComponents({ ...face, outerDiameterMm: 'x' })).toEqual([
      'components[0].outerDiameterMm not-a-number',
    ])
    expect(withComponents({ ...face, noseHeightMm: '0' })).toEqual([
      'components[0].noseHeightMm below',
    ])
    expect(withComponents({ ...face, colour: 'black' })).toEqual([
      'components[0].colour unknown-field',
    ])
  })

  test('have an inner diameter smaller than the outer one', () => {
    const ring = (outerDiameterMm: unknown, innerDiameterMm: unknown) =>
      withComponents({ ...face, outerDiameterMm, innerDiameterMm })
    expect(ring('61.6', '48.9')).toEqual([])
    expect(ring('61.6', '61.6')).toEqual(['components[0].innerDiameterMm inner-not-smaller'])
    expect(ring('', '48.9')).toEqual(['components[0].outerDiameterMm empty'])
    expect(ring('x', '48.9')).toEqual(['components[0].outerDiameterMm not-a-number'])
    expect(ring('61.6', '')).toEqual([])
  })
})
