import { beforeEach, describe, expect, it } from 'vitest'
import type { Instrument } from '../../src/domain/instrument.ts'
import { orderAlignment } from '../../src/domain/order-alignment.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { addDial, addSurvey } from '../support/add-survey.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'

let shop: Shop
let dial: Instrument
beforeEach(() => {
  shop = buildShop()
  dial = addDial(shop)
})

const aligned = () => orderAlignment(readEvidence(shop.store, shop.workOrder.id), [shop.limitSet])
const shaft = (condition: 'as-found' | 'as-left', eccentricityUm: number) =>
  addSurvey(shop, dial, { characteristic: 'shaft-run-out', condition, eccentricityUm })

describe('orderAlignment', () => {
  it('draws what was left, and holds a worn track against what was found', () => {
    shaft('as-found', 60)
    shaft('as-left', 10)
    const { surveys, alignment, found } = aligned()
    expect(surveys.map((one) => one.certified.condition)).toEqual(['as-left'])
    // Read to 0.1 um.
    expect(alignment.shaft?.amountUm).toBeCloseTo(10, 0)
    expect(found[0]?.totalUm).toBeGreaterThan(100)
  })

  it('takes what there is where only one of both was swept', () => {
    shaft('as-found', 60)
    const { surveys, found } = aligned()
    expect(surveys[0]?.certified.condition).toBe('as-found')
    expect(found).toHaveLength(1)
  })

  it('goes by the newest of a kind and leaves out values that were never swept', () => {
    shaft('as-left', 60)
    shaft('as-left', 10)
    expect(aligned().surveys).toHaveLength(1)
    expect(aligned().alignment.shaft?.amountUm).toBeCloseTo(10, 0)
    const evidence = readEvidence(shop.store, shop.workOrder.id)
    expect(orderAlignment({ ...evidence, dialSurveys: [] }, []).surveys).toEqual([])
  })
})
