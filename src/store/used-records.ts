import { and, eq, gte, lte, or, type SQL, sql } from 'drizzle-orm'
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core'
import type { DoubtWindow } from '../domain/doubt-window.ts'
import type { UsedRecord } from '../domain/touched-record.ts'
import type { Store } from './open.ts'
import { flatnessReading as reading } from './schema/flatness-reading.ts'
import { measuredValue as value } from './schema/measured-value.ts'
import { springCheck as spring } from './schema/spring-check.ts'
import { staticTest as test } from './schema/static-test.ts'
import { wearTrack as track } from './schema/wear-track.ts'

export type UseSearch = {
  readonly instrumentId: number
  readonly window: DoubtWindow
  /** Of one order alone. */
  readonly workOrderId?: number
}

/** Every record for which an instrument was used in a window, oldest use first. */
export function usedRecords(store: Store, search: UseSearch): UsedRecord[] {
  const found = [
    ...readings(store, search),
    ...tests(store, search),
    ...values(store, search),
    ...tracks(store, search),
    ...springs(store, search),
  ]
  return found.sort((a, b) => (a.usedAt < b.usedAt ? -1 : a.usedAt > b.usedAt ? 1 : 0))
}

function readings({ db }: Store, search: UseSearch): UsedRecord[] {
  const { instrumentId: id } = search
  const isUsed = or(eq(reading.lampInstrumentId, id), eq(reading.flatInstrumentId, id))
  const found = db
    .select()
    .from(reading)
    .where(and(isUsed, inSearch(reading.workOrderId, reading.recordedAt, search)))
    .all()
  return found.map(({ id: subjectId, workOrderId, recordedAt, recordedById, flatnessUm }) => ({
    subjectKind: 'flatness-reading',
    subjectId,
    workOrderId,
    usedAt: recordedAt,
    recordedById,
    figures: [{ characteristic: 'flatness', value: flatnessUm }],
  }))
}

function tests({ db }: Store, search: UseSearch): UsedRecord[] {
  const { instrumentId: id } = search
  const isUsed = or(
    eq(test.gaugeInstrumentId, id),
    eq(test.thermometerInstrumentId, id),
    eq(test.volumeInstrumentId, id),
  )
  const found = db
    .select()
    .from(test)
    .where(and(isUsed, inSearch(test.workOrderId, test.startedAt, search)))
    .all()
  return found.map((one) => ({
    subjectKind: 'static-test',
    subjectId: one.id,
    workOrderId: one.workOrderId,
    usedAt: one.startedAt,
    recordedById: one.recordedById,
    figures: [
      { characteristic: 'static-drop', value: one.pressureDropKPa },
      { characteristic: 'static-leak-rate', value: one.leakPaM3PerS },
    ],
  }))
}

function values({ db }: Store, search: UseSearch): UsedRecord[] {
  const second = sql`${value.secondInstrument} ->> '$.instrumentId'`
  const isUsed = or(eq(value.instrumentId, search.instrumentId), eq(second, search.instrumentId))
  const found = db
    .select()
    .from(value)
    .where(and(isUsed, inSearch(value.workOrderId, value.recordedAt, search)))
    .all()
  return found.map((one) => ({
    subjectKind: 'measured-value',
    subjectId: one.id,
    workOrderId: one.workOrderId,
    usedAt: one.recordedAt,
    recordedById: one.recordedById,
    figures: [{ characteristic: one.characteristic, value: one.valueUm }],
  }))
}

function tracks({ db }: Store, search: UseSearch): UsedRecord[] {
  const isUsed = eq(track.instrumentId, search.instrumentId)
  const found = db
    .select()
    .from(track)
    .where(and(isUsed, inSearch(track.workOrderId, track.recordedAt, search)))
    .all()
  return found.map((one) => ({
    subjectKind: 'wear-track',
    subjectId: one.id,
    workOrderId: one.workOrderId,
    usedAt: one.recordedAt,
    recordedById: one.recordedById,
    figures: [{ characteristic: 'track-movement', value: one.movementUm }],
  }))
}

function springs({ db }: Store, search: UseSearch): UsedRecord[] {
  const isUsed = eq(spring.instrumentId, search.instrumentId)
  const found = db
    .select()
    .from(spring)
    .where(and(isUsed, inSearch(spring.workOrderId, spring.recordedAt, search)))
    .all()
  return found.map((one) => ({
    subjectKind: 'spring-check',
    subjectId: one.id,
    workOrderId: one.workOrderId,
    usedAt: one.recordedAt,
    recordedById: one.recordedById,
    figures: [{ characteristic: 'spring-load', value: one.workingLoadN }],
  }))
}

/** Instants are kept in UTC, so the first ten characters are the day of use. */
function inSearch(
  workOrderId: SQLiteColumn,
  usedAt: SQLiteColumn,
  { window, workOrderId: only }: UseSearch,
): SQL | undefined {
  const day = sql`substr(${usedAt}, 1, 10)`
  return and(
    only === undefined ? undefined : eq(workOrderId, only),
    window.from === null ? undefined : gte(day, window.from),
    window.to === null ? undefined : lte(day, window.to),
  )
}
