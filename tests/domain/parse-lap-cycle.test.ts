import { describe, expect, test } from 'vitest'
import { parseLapCycle } from '../../src/domain/parse-lap-cycle.ts'
import { buildSeal } from '../support/build-seal.ts'
import { faultsOf } from '../support/faults-of.ts'

const context = { components: buildSeal().components }
const least = { componentId: '11', plate: 'Plate 2' }
const full = {
  ...least,
  plateForm: 'concave',
  abrasive: 'diamond-charged',
  grit: '3 µm',
  heightBeforeMm: '2,910',
  heightAfterMm: '2.895',
  plannedStockUm: '15',
  stockUm: '15.0',
  durationMin: '12',
  loadKg: '1.5',
  plateSagUm: '4',
  plateDiameterMm: '380',
  isNewRing: 'yes',
  note: 'rim was dry',
}
const parse = (changes: Record<string, unknown> = {}) =>
  parseLapCycle({ ...least, ...changes }, context)
const faults = (changes: Record<string, unknown>) => faultsOf(parse(changes))

describe('reading a lap cycle', () => {
  test('asks for the face and the plate alone, and makes nothing of what was left out', () => {
    expect(parse()).toEqual({
      ok: true,
      value: {
        componentId: 11,
        purpose: 'lap',
        plate: 'Plate 2',
        plateForm: null,
        abrasive: null,
        grit: '',
        heightBeforeMm: null,
        heightAfterMm: null,
        plannedStockUm: null,
        stockUm: null,
        durationMin: null,
        loadKg: null,
        plateSagUm: null,
        plateDiameterMm: null,
        isNewRing: false,
        typed: {},
        note: '',
        replacesId: null,
        reason: '',
      },
    })
    expect(parse({ stockUm: '', isNewRing: '' })).toEqual(parse())
  })

  test('keeps every figure with the text as typed', () => {
    const parsed = parse(full)
    expect(parsed.ok).toBe(true)
    expect(parsed.ok && parsed.value).toMatchObject({
      heightBeforeMm: 2.91,
      heightAfterMm: 2.895,
      stockUm: 15,
      durationMin: 12,
      loadKg: 1.5,
      isNewRing: true,
      typed: { heightBeforeMm: '2,910', stockUm: '15.0', plateSagUm: '4' },
    })
  })

  test('takes a stated zero as a zero', () => {
    const parsed = parse({ stockUm: '0', durationMin: '0.0' })
    expect(parsed.ok && parsed.value).toMatchObject({ stockUm: 0, durationMin: 0 })
  })

  test('reads the same from a JSON body', () => {
    const parsed = parse({ componentId: 11, stockUm: 12.5, isNewRing: true, loadKg: null })
    expect(parsed.ok && parsed.value).toMatchObject({
      componentId: 11,
      stockUm: 12.5,
      loadKg: null,
      isNewRing: true,
      typed: { stockUm: '12.5' },
    })
    expect(parse({ isNewRing: false })).toEqual(parse())
  })

  test.each([
    [{ componentId: '' }, 'componentId empty'],
    [{ componentId: '13' }, 'componentId not-known'],
    [{ plate: ' ' }, 'plate empty'],
    [{ plate: 'x'.repeat(61) }, 'plate too-long'],
    [{ grit: 'x'.repeat(41) }, 'grit too-long'],
    [{ note: 'x'.repeat(1001) }, 'note too-long'],
    [{ plateForm: 'wavy' }, 'plateForm not-a-choice'],
    [{ abrasive: 'sand' }, 'abrasive not-a-choice'],
    [{ isNewRing: 'maybe' }, 'isNewRing not-a-choice'],
    [{ heightBeforeMm: '0' }, 'heightBeforeMm below'],
    [{ heightAfterMm: '501' }, 'heightAfterMm above'],
    [{ heightAfterMm: '2.9 mm' }, 'heightAfterMm not-a-number'],
    [{ stockUm: '-1' }, 'stockUm below'],
    [{ stockUm: '10001' }, 'stockUm above'],
    [{ plannedStockUm: '-1' }, 'plannedStockUm below'],
    [{ durationMin: '2881' }, 'durationMin above'],
    [{ loadKg: '-0.1' }, 'loadKg below'],
    [{ plateDiameterMm: '19' }, 'plateDiameterMm below'],
    [{ plateForm: 'concave', plateSagUm: '1001' }, 'plateSagUm above'],
    [{ replacesId: '3' }, 'reason reason-needed'],
    [{ lamp: '1' }, 'lamp unknown-field'],
  ])('refuses %o: %s', (changes, fault) => {
    expect(faults(changes)).toEqual([fault])
  })

  test('refuses a face that grew, and takes one that lost nothing', () => {
    const heights = (heightBeforeMm: string, heightAfterMm: string) => ({
      heightBeforeMm,
      heightAfterMm,
    })
    expect(faults(heights('2.9', '2.901'))).toEqual(['heightAfterMm after-above-before'])
    expect(parse(heights('2.9', '2.9')).ok).toBe(true)
    expect(faults(heights('x', '2.901'))).toEqual(['heightBeforeMm not-a-number'])
  })

  test('takes what it was for, and stock where nobody says', () => {
    const purposeOf = (changes: Record<string, unknown>) => {
      const parsed = parse(changes)
      return parsed.ok ? parsed.value.purpose : parsed.faults
    }
    const said = ['polish', 'matt', 'lap', '', undefined].map((purpose) => purposeOf({ purpose }))
    expect(said).toEqual(['polish', 'matt', 'lap', 'lap', 'lap'])
    expect(faults({ purpose: 'shine' })).toEqual(['purpose not-a-choice'])
  })

  test('asks which way a plate is out of flat', () => {
    expect(faults({ plateSagUm: '4' })).toEqual(['plateForm empty'])
    expect(faults({ plateSagUm: '4', plateForm: 'flat' })).toEqual(['plateSagUm not-here'])
    expect(parse({ plateSagUm: '0', plateForm: 'flat' }).ok).toBe(true)
  })

  test('asks to confirm a stock that is more often a slip of the unit', () => {
    expect(faults({ stockUm: '0.02' })).toEqual(['stockUm beyond-window'])
    expect(faults({ plannedStockUm: '501' })).toEqual(['plannedStockUm beyond-window'])
    expect(parse({ stockUm: '0.02', confirmBeyondWindow: 'yes' }).ok).toBe(true)
    expect(parse({ stockUm: '500', plannedStockUm: '0.05' }).ok).toBe(true)
  })
})
