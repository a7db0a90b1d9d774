import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { AppError } from '../../src/domain/app-error.ts'
import { instrumentUse } from '../../src/domain/instrument-use.ts'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { findPublicCertificate } from '../../src/store/find-public-certificate.ts'
import { latestHandOver } from '../../src/store/latest-hand-over.ts'
import { listCertificates } from '../../src/store/list-certificates.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { openStore } from '../../src/store/open.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { readStoredFile } from '../../src/store/read-stored-file.ts'
import { refuse } from '../../src/store/refuse.ts'
import { type Release, release } from '../../src/store/release.ts'
import { requireCertificate } from '../../src/store/require-certificate.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { reserveCertificateNumber } from '../../src/store/reserve-certificate-number.ts'
import { stateDecontamination } from '../../src/store/state-decontamination.ts'
import { newCalibration } from '../support/build-instrument.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf, castAt, operator } from '../support/cast.ts'
import { dumpStore } from '../support/dump-store.ts'
import { migrationsFolder } from '../support/open-test-store.ts'
import {
  anotherOrder,
  doTheWork,
  freshReading,
  freshRelease,
  freshTest,
  workAndHandOver,
  workAndRelease,
} from '../support/shop-steps.ts'

const stageOf = ({ store, workOrder, cast }: Shop) =>
  requireWorkOrder(store, workOrder.number, cast.tess).stage
const handOver = (shop: Shop) =>
  addHandOver(shop.store, { workOrderId: shop.workOrder.id, note: 'done' }, actorOf(shop.cast.tess))
const releaseBy = (shop: Shop, fresh: Release) => release(shop.store, fresh, actorOf(fresh.by))
const refusal = (act: () => unknown): AppError => {
  try {
    act()
  } catch (error) {
    if (error instanceof AppError) return error
    throw error
  }
  throw new Error('nothing was refused')
}

describe('handing over', () => {
  test('is refused with what is missing, asked inside the transaction', () => {
    const shop = buildShop()
    addFlatnessReading(shop.store, freshReading(shop), actorOf(shop.cast.tess))
    const error = refusal(() => handOver(shop))
    expect(error.message).toBe('conflict: something-missing')
    expect(error.details).toEqual({ kinds: 'flatness, static-test' })
  })

  test('moves the order to the inspector, once', () => {
    const shop = buildShop()
    doTheWork(shop)
    const added = handOver(shop)
    expect(added).toMatchObject({ byName: 'Tess Turner', note: 'done', at: castAt })
    expect(latestHandOver(shop.store, shop.workOrder.id)).toEqual(added)
    expect(stageOf(shop)).toBe('handed-over')
    expect(() => handOver(shop)).toThrow('conflict: not-open')
    expect(latestHandOver(shop.store, 99)).toBeUndefined()
  })
})

describe('refusing', () => {
  test('sends the order back to the bench with a reason', () => {
    const shop = buildShop()
    const { id } = workAndHandOver(shop)
    const { ian } = shop.cast
    const empty = { handOverId: id, reason: ' ', by: ian }
    expect(() => refuse(shop.store, empty, actorOf(ian))).toThrow('invalid: reason-needed')
    const decision = refuse(shop.store, { ...empty, reason: 'scratched' }, actorOf(ian))
    expect(decision).toMatchObject({ outcome: 'refused', byName: 'Ian Ives', reason: 'scratched' })
    expect(stageOf(shop)).toBe('refused')
    handOver(shop)
    expect(stageOf(shop)).toBe('handed-over')
  })

  test('is the word of an inspector on a hand-over that stands, once', () => {
    const shop = buildShop()
    const { id } = workAndHandOver(shop)
    const { ian, ina, mo } = shop.cast
    const fresh = { handOverId: id, reason: 'scratched' }
    const by = (user: typeof ian) => () => refuse(shop.store, { ...fresh, by: user }, actorOf(user))
    expect(by(mo)).toThrow('forbidden: not-inspector')
    by(ian)()
    const second = refusal(by(ina))
    expect(second.message).toBe('conflict: already-decided')
    expect(second.details).toEqual({ by: 'Ian Ives' })
    const nowhere = { ...fresh, handOverId: 99, by: ian }
    expect(() => refuse(shop.store, nowhere, actorOf(ian))).toThrow('conflict: not-handed-over')
  })
})

describe('releasing', () => {
  test('issues a certificate with the record as drawn and the file as stored', () => {
    const shop = buildShop()
    const fresh = freshRelease(shop, workAndHandOver(shop))
    const { decision, certificate } = releaseBy(shop, fresh)
    expect(decision).toMatchObject({
      outcome: 'released',
      byName: 'Ian Ives',
      byDepartment: 'Inspection',
      at: castAt,
    })
    expect(certificate).toMatchObject({
      number: 'C-2026-0001-K7QX3M',
      revision: 0,
      decisionId: decision.id,
      record: fresh.certificate.record,
      issuedAt: castAt,
    })
    expect(stageOf(shop)).toBe('released')
    expect(readStoredFile(shop.store, certificate.sha256)).toEqual({
      bytes: fresh.certificate.pdf,
      mediaType: 'application/pdf',
    })
    expect(readEvidence(shop.store, shop.workOrder.id).decisions).toEqual([decision])
  })

  test('by two inspectors at once yields one release', () => {
    const shop = buildShop()
    const made = workAndHandOver(shop)
    const byIan = freshRelease(shop, made, shop.cast.ian, 'AAAAAA')
    const byIna = freshRelease(shop, made, shop.cast.ina, 'BBBBBB')
    releaseBy(shop, byIan)
    const second = refusal(() => releaseBy(shop, byIna))
    expect(second.message).toBe('conflict: already-decided')
    expect(second.details).toEqual({ by: 'Ian Ives' })
    expect(listCertificates(shop.store)).toHaveLength(1)
  })

  test('from two connections to one file yields one release', () => {
    const folder = mkdtempSync(join(tmpdir(), 'release-'))
    const file = join(folder, 'shop.sqlite')
    const shop = buildShop()
    const made = workAndHandOver(shop)
    shop.store.raw.prepare('VACUUM INTO ?').run(file)
    const stores = [1, 2].map(() => openStore(file, migrationsFolder, castAt))
    const drawn = [
      freshRelease({ ...shop, store: stores[0]! }, made, shop.cast.ian, 'AAAAAA'),
      freshRelease({ ...shop, store: stores[1]! }, made, shop.cast.ina, 'BBBBBB'),
    ]
    release(stores[1]!, drawn[1]!, actorOf(shop.cast.ina))
    const late = refusal(() => release(stores[0]!, drawn[0]!, actorOf(shop.cast.ian)))
    expect(late.details).toEqual({ by: 'Ina Irwin' })
    expect(listCertificates(stores[0]!).map((one) => one.number)).toEqual(['C-2026-0001-BBBBBB'])
    for (const store of stores) store.close()
    rmSync(folder, { recursive: true })
  })

  test('is refused to the one who tested, to other roles, and to the inactive', () => {
    const shop = buildShop()
    const { ian, ina, tom, mo } = shop.cast
    doTheWork(shop)
    addStaticTest(shop.store, freshTest(shop), actorOf(ian))
    const made = handOver(shop)
    expect(() => releaseBy(shop, freshRelease(shop, made, ian))).toThrow('lapped-or-tested')
    expect(() => releaseBy(shop, freshRelease(shop, made, tom))).toThrow('forbidden: not-inspector')
    expect(() => releaseBy(shop, freshRelease(shop, made, mo))).toThrow('forbidden: not-inspector')
    const gone = { ...ina, isActive: false }
    expect(() => releaseBy(shop, freshRelease(shop, made, gone))).toThrow('not-inspector')
    releaseBy(shop, freshRelease(shop, made, ina))
  })

  test('is refused while a result fails', () => {
    const shop = buildShop()
    doTheWork(shop)
    const directions = [0, 90].map((directionDeg) => ({ directionDeg, bands: 4, bandsTyped: '4' }))
    const bad = freshReading(shop, 'rotating-face', { directions })
    addFlatnessReading(shop.store, bad, actorOf(shop.cast.tess))
    const made = handOver(shop)
    expect(() => releaseBy(shop, freshRelease(shop, made))).toThrow('conflict: result-fails')
  })

  test('names the instrument that was out of calibration until it is acknowledged', () => {
    const shop = buildShop()
    const overdue = instrumentUse(shop.gauge, '2027-06-01')
    doTheWork(shop)
    addStaticTest(shop.store, freshTest(shop, { gauge: overdue }), actorOf(shop.cast.tess))
    const made = handOver(shop)
    const fresh = freshRelease(shop, made)
    const error = refusal(() => releaseBy(shop, fresh))
    expect(error.message).toBe('conflict: instrument-not-acknowledged')
    expect(error.details).toEqual({ numbers: 'G-01' })
  })

  test('is refused when the record is not what the store says', () => {
    const shop = buildShop()
    const made = workAndHandOver(shop)
    const fresh = freshRelease(shop, made)
    const before = dumpStore(shop.store)
    const { certificate } = fresh
    const record = { ...certificate.record, verdict: 'open' as const }
    const forged = { ...fresh, certificate: { ...certificate, record } }
    expect(() => releaseBy(shop, forged)).toThrow('conflict: evidence-changed')
    expect(dumpStore(shop.store)).toBe(before)
    const { id: workOrderId } = shop.workOrder
    const stated = { workOrderId, decontamination: 'not-needed', lastFluid: 'water' } as const
    stateDecontamination(shop.store, stated, operator)
    expect(() => releaseBy(shop, fresh)).toThrow('conflict: evidence-changed')
    releaseBy(shop, freshRelease(shop, made))
  })

  test('does not depend on what happened to instruments since the readings', () => {
    const shop = buildShop()
    const fresh = freshRelease(shop, workAndHandOver(shop))
    const dates = { calibratedOn: '2026-11-26', dueOn: '2027-11-26', certificateNumber: 'K-2' }
    addCalibration(shop.store, newCalibration({ instrumentId: shop.lamp.id, ...dates }), operator)
    releaseBy(shop, fresh)
  })

  test('is followed by dispatch and nothing else', () => {
    const shop = buildShop()
    workAndRelease(shop)
    const move = (to: 'withdrawn' | 'dispatched') =>
      moveWorkOrder(shop.store, { workOrderId: shop.workOrder.id, to, reason: 'x' }, operator)
    expect(() => move('withdrawn')).toThrow('conflict: stage-not-next')
    expect(move('dispatched').stage).toBe('dispatched')
  })
})

describe('certificate numbers', () => {
  test('count without gaps, and are taken by the release alone', () => {
    const shop = buildShop()
    const made = workAndHandOver(shop)
    freshRelease(shop, made)
    const fresh = freshRelease(shop, made)
    expect(fresh.certificate.expectedSequence).toBe(1)
    releaseBy(shop, fresh)
    const next = workAndRelease(shop, anotherOrder(shop), 'ZZZZZZ')
    expect(next.certificate.number).toBe('C-2026-0002-ZZZZZZ')
  })

  test('are refused where another release was faster', () => {
    const shop = buildShop()
    const late = freshRelease(shop, workAndHandOver(shop))
    workAndRelease(shop, anotherOrder(shop), 'ZZZZZZ')
    expect(() => releaseBy(shop, late)).toThrow('conflict: number-taken')
    expect(stageOf(shop)).toBe('handed-over')
  })

  test.each(['', 'short', 'lowerx', 'TOOLONGX', 'A-B-CD'])('refuse the code "%s"', (code) => {
    expect(() => reserveCertificateNumber(buildShop().store, { year: 2026, code })).toThrow(
      `reserveCertificateNumber requires six signs 0-9 A-Z, got ${code}`,
    )
  })
})

describe('a certificate', () => {
  test('is not found by a stranger, as one that is not there', () => {
    const shop = buildShop()
    const { certificate } = workAndRelease(shop)
    const { tess, cora, olga, mo } = shop.cast
    for (const viewer of [tess, cora, mo]) {
      expect(requireCertificate(shop.store, certificate.number, viewer)).toEqual(certificate)
    }
    const refused = 'not-found: no-certificate'
    const ask = (number: string, revision?: number) => () =>
      requireCertificate(shop.store, number, olga, revision)
    expect(ask(certificate.number)).toThrow(refused)
    expect(ask(certificate.number, 0)).toThrow(refused)
    expect(ask('C-2026-0001-AAAAAA')).toThrow(refused)
    expect(requireCertificate(shop.store, certificate.number, cora, 0)).toEqual(certificate)
    expect(() => requireCertificate(shop.store, certificate.number, cora, 1)).toThrow(refused)
  })

  test('is listed for its customer and its order', () => {
    const shop = buildShop()
    const { certificate } = workAndRelease(shop)
    const { cora, olga } = shop.cast
    const ofCustomer = (customerId: number) => listCertificates(shop.store, { customerId })
    expect(ofCustomer(cora.customerId!)).toEqual([certificate])
    expect(ofCustomer(olga.customerId!)).toEqual([])
    expect(listCertificates(shop.store, { workOrderId: shop.workOrder.id })).toHaveLength(1)
    expect(listCertificates(shop.store, { workOrderId: 99 })).toEqual([])
  })

  test('can be checked by anyone who holds its whole number', () => {
    const shop = buildShop()
    const { certificate } = workAndRelease(shop)
    const shown = findPublicCertificate(shop.store, certificate.number)
    expect(shown).toMatchObject({ number: certificate.number, sha256: certificate.sha256 })
    expect(findPublicCertificate(shop.store, 'C-2026-0001')).toBeUndefined()
    expect(() => readStoredFile(shop.store, 'f'.repeat(64))).toThrow('not-found: no-file')
  })
})
