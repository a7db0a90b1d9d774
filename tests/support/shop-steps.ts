import type { Certificate } from '../../src/domain/certificate.ts'
import { certificateRecord } from '../../src/domain/certificate-record.ts'
import type { NewDynamicRun } from '../../src/domain/dynamic-run.ts'
import type { FacePhoto } from '../../src/domain/face-photo.ts'
import type { CountedReading } from '../../src/domain/flatness.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { instrumentUse } from '../../src/domain/instrument-use.ts'
import type { NewLapCycle } from '../../src/domain/lap-cycle.ts'
import type { MeasuredValue } from '../../src/domain/measured-value.ts'
import type { Decision, HandOver } from '../../src/domain/release.ts'
import type { FaceKind } from '../../src/domain/seal.ts'
import type { StaticTest } from '../../src/domain/static-test.ts'
import type { User } from '../../src/domain/user.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import type { NewWorkOrder, WorkOrder } from '../../src/domain/work-order.ts'
import type { FreshFacePhoto } from '../../src/store/add-face-photo.ts'
import {
  addFlatnessReading,
  type FreshFlatnessReading,
} from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import type { FreshMeasuredValue } from '../../src/store/add-measured-value.ts'
import { addStaticTest, type FreshStaticTest } from '../../src/store/add-static-test.ts'
import { addWorkOrder } from '../../src/store/add-work-order.ts'
import { decidedBy } from '../../src/store/decided-by.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { type Release, release } from '../../src/store/release.ts'
import { reserveCertificateNumber } from '../../src/store/reserve-certificate-number.ts'
import { buildFlatnessReading } from './build-flatness-reading.ts'
import { buildLapCycle } from './build-lap-cycle.ts'
import { buildMeasuredValue } from './build-measured-value.ts'
import { newWorkOrder, type Shop } from './build-shop.ts'
import { buildStaticTest } from './build-static-test.ts'
import { buildWholeFace } from './build-whole-face.ts'
import { actorOf, castAt, operator } from './cast.ts'

const day = castAt.slice(0, 10)

/** Another order for the shop's seal. */
export function anotherOrder(shop: Shop, changes: Partial<NewWorkOrder> = {}): WorkOrder {
  const { store, customer, seal, limitSet } = shop
  const of = { customerId: customer.id, sealId: seal.id, limitSetId: limitSet.id }
  return addWorkOrder(store, newWorkOrder({ ...of, ...changes }), operator)
}

/** An as-left reading of a face, convex 2 and 1 bands, ready to be stored. */
export function freshReading(
  shop: Shop,
  faceKind: FaceKind = 'rotating-face',
  changes: Partial<CountedReading> = {},
): FreshFlatnessReading {
  const face = shop.seal.components.find((one) => one.kind === faceKind)
  const {
    id: _1,
    faceKind: _2,
    recordedById: _3,
    recordedByName: _4,
    recordedAt: _5,
    replacedById: _6,
    sees: _7,
    ...fresh
  } = buildFlatnessReading({
    workOrderId: shop.workOrder.id,
    componentId: face!.id,
    lampInstrumentId: shop.lamp.id,
    flatInstrumentId: shop.flat.id,
    lamp: instrumentUse(shop.lamp, day),
    flat: instrumentUse(shop.flat, day),
    ...changes,
  })
  return fresh
}

/** A photograph of the rotating face, ready to be stored: to the store it is bytes. */
export function freshPhoto(shop: Shop, changes: Partial<FreshFacePhoto> = {}): FreshFacePhoto {
  const face = shop.seal.components.find((one) => one.kind === 'rotating-face')
  return {
    workOrderId: shop.workOrder.id,
    componentId: face!.id,
    mediaType: 'image/jpeg',
    widthPx: 1000,
    heightPx: 800,
    foundEdges: null,
    note: '',
    bytes: Buffer.from('a photograph'),
    ...changes,
  }
}

/** A reading of the whole rotating face from that photograph, ready to be stored. */
export function freshWholeFace(shop: Shop, photo: FacePhoto): FreshFlatnessReading {
  const { source, ...rest } = buildWholeFace()
  const wholeFace = { ...rest, source: { ...source, photoId: photo.id } } as WholeFace
  const { workOrderId } = photo
  const counted = freshReading(shop, 'rotating-face', { workOrderId })
  const figures = { flatnessUm: 0.2, bands: 0.68, form: 'saddle', directions: [] }
  const pattern = 'whole-face'
  return { ...counted, ...figures, pattern, method: 'flatness/photo 1', wholeFace }
}

/** A test of the whole seal, 1 kPa in 300 s from 2 L, ready to be stored. */
export function freshTest(shop: Shop, changes: Partial<StaticTest> = {}): FreshStaticTest {
  const {
    id: _1,
    recordedById: _2,
    recordedByName: _3,
    recordedAt: _4,
    replacedById: _5,
    ...fresh
  } = buildStaticTest({
    workOrderId: shop.workOrder.id,
    gaugeInstrumentId: shop.gauge.id,
    thermometerInstrumentId: shop.thermometer.id,
    gauge: instrumentUse(shop.gauge, day),
    thermometer: instrumentUse(shop.thermometer, day),
    ...changes,
  })
  return fresh
}

/** A shaft run-out as left, 0.04 mm by a dial of the bench, ready to be stored. */
export function freshValue(
  shop: Shop,
  dial: Instrument,
  changes: Partial<MeasuredValue> = {},
): FreshMeasuredValue {
  const {
    id: _1,
    recordedById: _2,
    recordedByName: _3,
    recordedAt: _4,
    replacedById: _5,
    ...fresh
  } = buildMeasuredValue({
    workOrderId: shop.workOrder.id,
    instrumentId: dial.id,
    instrument: instrumentUse(dial, day),
    ...changes,
  })
  return fresh
}

/** A cycle of the rotating face of which nothing but the plate is known, ready to be stored. */
export function freshCycle(shop: Shop, changes: Partial<NewLapCycle> = {}): NewLapCycle {
  const {
    id: _1,
    recordedById: _2,
    recordedByName: _3,
    recordedAt: _4,
    replacedById: _5,
    ...fresh
  } = buildLapCycle({
    workOrderId: shop.workOrder.id,
    componentId: shop.seal.components.find((one) => one.kind === 'rotating-face')!.id,
    ...changes,
  })
  return fresh
}

/** Reads both faces and tests the seal, by Tess. */
export function doTheWork(shop: Shop, order: WorkOrder = shop.workOrder): void {
  const by = actorOf(shop.cast.tess)
  const of = { workOrderId: order.id }
  addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', of), by)
  addFlatnessReading(shop.store, freshReading(shop, 'stationary-seat', of), by)
  addStaticTest(shop.store, freshTest(shop, of), by)
}

/** Does the work and hands over, by Tess. */
export function workAndHandOver(shop: Shop, order: WorkOrder = shop.workOrder): HandOver {
  doTheWork(shop, order)
  return addHandOver(shop.store, { workOrderId: order.id, note: '' }, actorOf(shop.cast.tess))
}

/** Everything that a release takes, drawn from the record as it stands now. */
export function freshRelease(
  shop: Shop,
  handOver: HandOver,
  by: User = shop.cast.ian,
  code = 'K7QX3M',
): Release {
  const { number, sequence } = reserveCertificateNumber(shop.store, { year: 2026, code })
  const record = certificateRecord({
    evidence: readEvidence(shop.store, handOver.workOrderId),
    decision: decidedBy(by, actorOf(by)),
    number,
    revision: 0,
    issuedAt: castAt,
    verifyUrl: `http://127.0.0.1:3000/verify/${number}`,
    workshop: { name: 'Test Workshop', address: '1 Test Quay' },
    acknowledgement: '',
  })
  const pdf = Buffer.from(`%PDF of ${number}`)
  const certificate = { number, revision: 0, record, pdf, expectedSequence: sequence }
  return { handOverId: handOver.id, by, reason: '', certificate }
}

/** The whole way of an order: worked by Tess, released by Ian. */
export function workAndRelease(
  shop: Shop,
  order: WorkOrder = shop.workOrder,
  code = 'K7QX3M',
): { readonly decision: Decision; readonly certificate: Certificate } {
  const handOver = workAndHandOver(shop, order)
  return release(
    shop.store,
    freshRelease(shop, handOver, shop.cast.ian, code),
    actorOf(shop.cast.ian),
  )
}

/** A run of which nothing but its beginning is known, ready to be stored. */
export function freshRun(shop: Shop, changes: Partial<NewDynamicRun> = {}): NewDynamicRun {
  return {
    workOrderId: shop.workOrder.id,
    startedAt: '2026-11-24T10:00:00.000Z',
    liquid: 'Water',
    densityKgPerM3: 998,
    steps: [],
    note: '',
    replacesId: null,
    reason: '',
    ...changes,
  }
}
