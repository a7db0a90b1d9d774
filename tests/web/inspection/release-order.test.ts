import { describe, expect, test, vi } from 'vitest'
import { AppError } from '../../../src/domain/app-error.ts'
import { readEvidence } from '../../../src/store/read-evidence.ts'
import { evidenceFingerprint } from '../../../src/web/inspection/evidence-fingerprint.ts'
import { releaseOrder } from '../../../src/web/inspection/release-order.ts'
import { buildShop } from '../../support/build-shop.ts'
import { actorOf } from '../../support/cast.ts'
import { workAndHandOver } from '../../support/shop-steps.ts'

// Each release draws its document, 0.2 s alone and ten times that on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

function prepared() {
  const { store, cast, workOrder } = prepare()
  let drawn = 0
  const place = {
    store,
    origin: 'http://127.0.0.1:3000',
    workshop: { name: 'Test Workshop', address: '1 Test Quay' },
    randomBytes: (count: number) => new Uint8Array(count).fill(drawn++),
  }
  const asked = {
    workOrderId: workOrder.id,
    by: cast.ian,
    actor: actorOf(cast.ian),
    reason: '',
    fingerprint: evidenceFingerprint(readEvidence(store, workOrder.id)),
  }
  return { place, asked }
}

function prepare() {
  const shop = buildShop()
  workAndHandOver(shop)
  return shop
}

describe('a release whose number was taken meanwhile', () => {
  test('starts again with another number', async () => {
    const { place, asked } = prepared()
    let tries = 0
    const where = await releaseOrder(place, asked, (work) => {
      tries++
      if (tries < 3) throw new AppError('conflict', 'number-taken')
      return work()
    })
    expect(tries).toBe(3)
    // The third drawing of random bytes is all twos, the third sign of the alphabet.
    expect(where).toBe('/certificates/C-2026-0001-444444')
  })

  test('gives up after three tries and says so', async () => {
    const { place, asked } = prepared()
    let tries = 0
    const never = releaseOrder(place, asked, () => {
      tries++
      throw new AppError('conflict', 'number-taken')
    })
    await expect(never).rejects.toMatchObject({ reason: 'number-taken' })
    expect(tries).toBe(3)
  })

  test('does not start again for any other refusal', async () => {
    const { place, asked } = prepared()
    let tries = 0
    const stale = releaseOrder(place, { ...asked, fingerprint: 'older' }, (work) => {
      tries++
      return work()
    })
    await expect(stale).rejects.toMatchObject({ reason: 'evidence-changed' })
    expect(tries).toBe(1)
  })
})
