import { asc, eq } from 'drizzle-orm'
import type { DoubtWindow } from '../domain/doubt-window.ts'
import type { Calibration, Instrument } from '../domain/instrument.ts'
import type { UsedKind } from '../domain/result-subject.ts'
import type { TouchedRecord, UsedRecord } from '../domain/touched-record.ts'
import { newestDoubtAnswers } from './newest-doubt-answers.ts'
import type { Store } from './open.ts'
import { certificate } from './schema/certificate.ts'
import { customer } from './schema/customer.ts'
import { flatnessReading } from './schema/flatness-reading.ts'
import { measuredValue } from './schema/measured-value.ts'
import { springCheck } from './schema/spring-check.ts'
import { staticTest } from './schema/static-test.ts'
import { wearTrack } from './schema/wear-track.ts'
import { workOrder } from './schema/work-order.ts'
import { usedRecords } from './used-records.ts'

/** Every record that a calibration put in doubt, oldest use first, with what became of it. */
export function listTouched(
  store: Store,
  of: {
    readonly instrument: Instrument
    readonly found: Calibration
    readonly window: DoubtWindow
  },
): TouchedRecord[] {
  const { instrument, found, window } = of
  const about = {
    calibrationId: found.id,
    instrumentId: instrument.id,
    instrumentNumber: instrument.number,
    foundOn: found.calibratedOn,
  }
  const answerOf = newestDoubtAnswers(store, found.id)
  const orders = new Map<number, Order>()
  return usedRecords(store, { instrumentId: instrument.id, window }).map((used) => {
    const order = orders.get(used.workOrderId) ?? orderOf(store, used.workOrderId)
    orders.set(used.workOrderId, order)
    const replacedAt = replacementOf(store, used)
    return {
      ...used,
      ...about,
      ...answerOf(used),
      workOrderNumber: order.number,
      customerName: order.customerName,
      isReplaced: replacedAt !== null,
      certificateNumbers: numbersOf(order, used, replacedAt),
    }
  })
}

type Order = {
  readonly number: string
  readonly customerName: string
  readonly certificates: readonly { readonly number: string; readonly issuedAt: string }[]
}

function orderOf({ db }: Store, id: number): Order {
  const found = db
    .select({ number: workOrder.number, customerName: customer.name })
    .from(workOrder)
    .innerJoin(customer, eq(customer.id, workOrder.customerId))
    .where(eq(workOrder.id, id))
    .get()
  if (found === undefined) throw new RangeError(`orderOf requires an order that stands, got ${id}`)
  const certificates = db
    .select({ number: certificate.number, issuedAt: certificate.issuedAt })
    .from(certificate)
    .where(eq(certificate.workOrderId, id))
    .orderBy(asc(certificate.id))
    .all()
  return { ...found, certificates }
}

const tables = {
  'flatness-reading': flatnessReading,
  'static-test': staticTest,
  'measured-value': measuredValue,
  'wear-track': wearTrack,
  'spring-check': springCheck,
} as const satisfies Record<UsedKind, unknown>

/** When another record took its place; null while it stands. */
function replacementOf({ db }: Store, { subjectKind, subjectId }: UsedRecord): string | null {
  const table = tables[subjectKind]
  const found = db
    .select({ at: table.recordedAt })
    .from(table)
    .where(eq(table.replacesId, subjectId))
    .get()
  return found?.at ?? null
}

function numbersOf(
  { certificates }: Order,
  { usedAt }: UsedRecord,
  replacedAt: string | null,
): readonly string[] {
  const issued = certificates.filter(
    (one) => one.issuedAt >= usedAt && (replacedAt === null || one.issuedAt < replacedAt),
  )
  return [...new Set(issued.map((one) => one.number))]
}
