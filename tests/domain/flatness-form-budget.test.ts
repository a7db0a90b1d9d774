import { describe, expect, test } from 'vitest'
import { flatnessFormBudget } from '../../src/domain/flatness-form-budget.ts'
import { buildComponent } from '../support/build-seal.ts'

const face = buildComponent({
  id: 11,
  kind: 'rotating-face',
  material: 'silicon-carbide-sintered',
  outerDiameterMm: 68,
})
const other = buildComponent({
  id: 12,
  kind: 'stationary-seat',
  material: 'nickel-iron',
  outerDiameterMm: null,
})
const shape = (input: Record<string, unknown>) => flatnessFormBudget(input, [face, other])
const emptyBow = { deltaK: '', thicknessMm: '', diameterMm: '', expansionUmPerMK: '' }

describe('what the form says about its uncertainty', () => {
  test('keeps every other field as it is, unknown ones too', () => {
    expect(shape({ faceId: '11', note: 'x', surprise: '1' })).toEqual({
      faceId: '11',
      note: 'x',
      surprise: '1',
    })
  })

  test('lets a half width that was typed go before the one that was chosen', () => {
    const chosen = { readingHalfWidthBands: '0.25', readingHalfWidthOther: '' }
    expect(shape(chosen)).toEqual({ readingHalfWidthBands: '0.25' })
    expect(shape({ ...chosen, readingHalfWidthOther: '0,2' })).toEqual({
      readingHalfWidthBands: '0,2',
    })
  })

  test('reads repeats in one line, separated by spaces or semicolons, with point or comma', () => {
    const three = [{ bands: '2,0' }, { bands: '2.25' }, { bands: '2' }]
    expect(shape({ repeats: ' 2,0  2.25 2 ' })).toEqual({ repeats: three })
    expect(shape({ repeats: '2,0;2.25; 2' })).toEqual({ repeats: three })
    expect(shape({ repeats: '  ' })).toEqual({})
    expect(shape({ repeats: ['2', '2'] })).toEqual({ repeats: ['2', '2'] })
  })

  test('takes a bow as not stated where nothing of it was typed', () => {
    const flat = { ...emptyBow, expansionUmPerMK: '0.55' }
    expect(shape({ thermal: emptyBow, flatThermal: flat })).toEqual({})
  })

  test('fills in the ring’s diameter and expansion from the face, where they stay empty', () => {
    const thermal = { ...emptyBow, deltaK: '0,5', thicknessMm: '10' }
    expect(shape({ faceId: '11', thermal }).thermal).toEqual({
      deltaK: '0,5',
      thicknessMm: '10',
      diameterMm: '68',
      expansionUmPerMK: '4',
    })
    const typed = { ...thermal, diameterMm: '70', expansionUmPerMK: '4.3' }
    expect(shape({ faceId: '11', thermal: typed }).thermal).toEqual(typed)
  })

  test('fills in nothing that is not known of the face, and nothing without a face', () => {
    const thermal = { ...emptyBow, deltaK: '1', thicknessMm: '10' }
    expect(shape({ faceId: '12', thermal }).thermal).toEqual(thermal)
    expect(shape({ faceId: '', thermal }).thermal).toEqual(thermal)
  })

  test('keeps a bow of which only a part was typed, so that the rest is asked for', () => {
    const thermal = { ...emptyBow, thicknessMm: '10' }
    expect(shape({ thermal }).thermal).toEqual(thermal)
  })
})
