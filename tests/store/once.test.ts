import { describe, expect, test } from 'vitest'
import { AppError } from '../../src/domain/app-error.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { once } from '../../src/store/once.ts'
import { pruneExpired } from '../../src/store/prune-expired.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf, castAt } from '../support/cast.ts'
import { freshReading } from '../support/shop-steps.ts'

const request = { userId: 1, key: 'k-1', requestHash: 'h-1', at: castAt }

const record = (shop: Shop, changes: Partial<typeof request> = {}, status = 201) =>
  once(shop.store, { ...request, ...changes }, () => {
    const { id } = addFlatnessReading(shop.store, freshReading(shop), actorOf(shop.cast.tess))
    return { status, body: JSON.stringify({ id }) }
  })
const readingCount = (shop: Shop) => listFlatnessReadings(shop.store, shop.workOrder.id).length

describe('a request that is sent twice', () => {
  test('records once and gets the first answer again', () => {
    const shop = buildShop()
    const first = record(shop)
    expect(first).toEqual({ status: 201, body: '{"id":1}', isRepeat: false })
    expect(record(shop)).toEqual({ ...first, isRepeat: true })
    expect(readingCount(shop)).toBe(1)
  })

  test('is a conflict where the same key comes with another body', () => {
    const shop = buildShop()
    record(shop)
    expect(() => record(shop, { requestHash: 'h-2' })).toThrow('conflict: key-reused')
    expect(readingCount(shop)).toBe(1)
  })

  test('is another request with another key, or from another user', () => {
    const shop = buildShop()
    record(shop)
    expect(record(shop, { key: 'k-2' }).isRepeat).toBe(false)
    expect(record(shop, { userId: 2 }).isRepeat).toBe(false)
    expect(readingCount(shop)).toBe(3)
  })

  test('is tried again after it was refused, whether by throwing or by its answer', () => {
    const shop = buildShop()
    const refused = () => {
      throw new AppError('conflict', 'not-open')
    }
    expect(() => once(shop.store, request, refused)).toThrow('conflict: not-open')
    once(shop.store, request, () => ({ status: 422, body: 'faults' }))
    expect(record(shop, { requestHash: 'corrected' }).isRepeat).toBe(false)
  })

  test('leaves nothing of the work where the work fails at its end', () => {
    const shop = buildShop()
    const fails = () => {
      addFlatnessReading(shop.store, freshReading(shop), actorOf(shop.cast.tess))
      throw new Error('full')
    }
    expect(() => once(shop.store, request, fails)).toThrow('full')
    expect(readingCount(shop)).toBe(0)
  })

  test('may be sent for thirty days', () => {
    const shop = buildShop()
    record(shop)
    pruneExpired(shop.store, '2026-12-25T09:00:00.000Z')
    expect(record(shop).isRepeat).toBe(true)
    expect(pruneExpired(shop.store, '2026-12-25T09:00:00.001Z').answers).toBe(1)
    expect(record(shop).isRepeat).toBe(false)
  })
})
