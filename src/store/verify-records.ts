import { eq, getTableName } from 'drizzle-orm'
import type { AnySQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core'
import type { AuditAct } from '../domain/audit-act.ts'
import type { RecordFault } from '../domain/store-fault.ts'
import { fileHash } from './file-hash.ts'
import { listAssemblies } from './list-assemblies.ts'
import { listFacePhotos } from './list-face-photos.ts'
import { listFindings } from './list-findings.ts'
import { listFlatnessReadings } from './list-flatness-readings.ts'
import { listLapCycles } from './list-lap-cycles.ts'
import { listMeasuredValues } from './list-measured-values.ts'
import { listPartLines } from './list-part-lines.ts'
import { listSpringChecks } from './list-spring-checks.ts'
import { listStaticTests } from './list-static-tests.ts'
import { listWearTracks } from './list-wear-tracks.ts'
import type { Store } from './open.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { requireSeal } from './require-seal.ts'
import { agreedRule } from './schema/agreed-rule.ts'
import { calibration } from './schema/calibration.ts'
import { certificate } from './schema/certificate.ts'
import { concession } from './schema/concession.ts'
import { customer } from './schema/customer.ts'
import { decision } from './schema/decision.ts'
import { dialSurvey } from './schema/dial-survey.ts'
import { dialSurveyEnd } from './schema/dial-survey-end.ts'
import { dialSurveyReading } from './schema/dial-survey-reading.ts'
import { doubtAnswer } from './schema/doubt-answer.ts'
import { dynamicRun } from './schema/dynamic-run.ts'
import { dynamicRunBatch } from './schema/dynamic-run-batch.ts'
import { equipment } from './schema/equipment.ts'
import { handOver } from './schema/hand-over.ts'
import { instrument } from './schema/instrument.ts'
import { instrumentAmendment } from './schema/instrument-amendment.ts'
import { instrumentFile } from './schema/instrument-file.ts'
import { instrumentHolder } from './schema/instrument-holder.ts'
import { limitSet } from './schema/limit-set.ts'
import { limitSetStep } from './schema/limit-set-step.ts'
import { seal } from './schema/seal.ts'
import { useException } from './schema/use-exception.ts'
import { useExceptionAnswer } from './schema/use-exception-answer.ts'
import { user } from './schema/user.ts'
import { workOrder } from './schema/work-order.ts'
import { userColumns } from './user-columns.ts'

type Detail = Readonly<Record<string, unknown>> & { readonly id: number }
type Line = { readonly id: number; readonly act: AuditAct; readonly detail: string }

type Witness = {
  readonly table: string
  /** The record as it stands, in the form in which its line was written. */
  readonly find: (store: Store, detail: Detail) => object | undefined
  /** What may have changed since, by an act with a line of its own. */
  readonly mayChange?: readonly string[]
}

type Identified = SQLiteTable & { readonly id: AnySQLiteColumn }

/** The row of the same number. */
function rowOf(table: Identified, mayChange: readonly string[] = []): Witness {
  return {
    table: getTableName(table),
    find: ({ db }, { id }) => db.select().from(table).where(eq(table.id, id)).get(),
    mayChange,
  }
}

/** One of the records of an order, as they are listed. */
function listed(
  table: string,
  list: (store: Store, workOrderId: number) => readonly { readonly id: number }[],
): Witness {
  return {
    table,
    find: (store, { id, workOrderId }) =>
      list(store, Number(workOrderId)).find((one) => one.id === id),
    mayChange: ['replacedById'],
  }
}

const flatness = listed('flatness_reading', listFlatnessReadings)
const staticTest = listed('static_test', listStaticTests)
const measuredValue = listed('measured_value', listMeasuredValues)
const lapCycle = listed('lap_cycle', listLapCycles)
const wearTrack = listed('wear_track', listWearTracks)
const springCheck = listed('spring_check', listSpringChecks)
const assembly = listed('assembly', listAssemblies)
const finding = listed('finding', listFindings)
const partLine = listed('part_line', listPartLines)
const decided = rowOf(decision)
const limitStep = rowOf(limitSetStep)

/** Each act whose line holds the whole record that it wrote. */
const witnesses: Readonly<Partial<Record<AuditAct, Witness>>> = {
  'add-customer': rowOf(customer),
  'add-equipment': rowOf(equipment),
  'add-seal': {
    table: 'seal',
    find: (store, { id }) => {
      const found = store.db.select({ id: seal.id }).from(seal).where(eq(seal.id, id)).get()
      return found === undefined ? undefined : requireSeal(store, id)
    },
  },
  'add-instrument': rowOf(instrument, ['withdrawnOn']),
  'add-user': {
    table: 'user',
    find: ({ db }, { id }) => db.select(userColumns).from(user).where(eq(user.id, id)).get(),
    mayChange: ['isActive'],
  },
  'add-flatness-reading': flatness,
  'correct-flatness-reading': flatness,
  'add-static-test': staticTest,
  'correct-static-test': staticTest,
  'add-measured-value': measuredValue,
  'correct-measured-value': measuredValue,
  'add-face-photo': listed('face_photo', listFacePhotos),
  'add-lap-cycle': lapCycle,
  'correct-lap-cycle': lapCycle,
  'add-wear-track': wearTrack,
  'correct-wear-track': wearTrack,
  'add-spring-check': springCheck,
  'correct-spring-check': springCheck,
  'add-assembly': assembly,
  'correct-assembly': assembly,
  'add-finding': finding,
  'correct-finding': finding,
  'add-part-line': partLine,
  'correct-part-line': partLine,
  'add-dynamic-run': rowOf(dynamicRun),
  'correct-dynamic-run': rowOf(dynamicRun),
  'add-run-samples': {
    table: 'dynamic_run_batch',
    find: ({ db }, { id }) => {
      const found = db.select().from(dynamicRunBatch).where(eq(dynamicRunBatch.id, id)).get()
      if (found === undefined) return undefined
      const { samples, ...kept } = found
      return { ...kept, samplesSha256: fileHash(Buffer.from(samples)) }
    },
  },
  'start-survey': rowOf(dialSurvey),
  'add-survey-reading': rowOf(dialSurveyReading),
  'end-survey': {
    table: 'dial_survey_end',
    find: ({ db }, { id }) => {
      const isSame = eq(dialSurveyEnd.dialSurveyId, id)
      const found = db.select().from(dialSurveyEnd).where(isSame).get()
      return found === undefined ? undefined : { ...found, id }
    },
  },
  release: decided,
  refuse: decided,
  'agree-rule': rowOf(agreedRule),
  'add-concession': rowOf(concession),
  'ask-use-exception': rowOf(useException),
  'answer-use-exception': rowOf(useExceptionAnswer),
  'hand-over': rowOf(handOver),
  'add-work-order': rowOf(workOrder, ['stage', 'decontamination', 'lastFluid']),
  'add-calibration': rowOf(calibration),
  'amend-instrument': rowOf(instrumentAmendment),
  'set-instrument-holder': rowOf(instrumentHolder),
  'add-instrument-file': rowOf(instrumentFile),
  'answer-doubt': rowOf(doubtAnswer),
  'add-limit-set': {
    table: 'limit_set',
    find: (store, { id }) => {
      const isSame = eq(limitSet.id, id)
      const found = store.db.select({ id: limitSet.id }).from(limitSet).where(isSame).get()
      return found === undefined ? undefined : requireLimitSet(store, id)
    },
    mayChange: ['steps'],
  },
  'approve-limit-set': limitStep,
  'retire-limit-set': limitStep,
  'issue-certificate': {
    table: 'certificate',
    find: ({ db }, { certificateId }) => {
      const isSame = eq(certificate.id, Number(certificateId))
      const found = db.select().from(certificate).where(isSame).get()
      if (found === undefined) return undefined
      const recordSha256 = fileHash(Buffer.from(JSON.stringify(found.record)))
      return { ...found, certificateId, recordSha256 }
    },
  },
}

/**
 * Holds every record against the audit line that was written with it, which the chain guards: an
 * edited or missing record is named with what differs. Empty when all agree.
 */
export function verifyRecords(store: Store): RecordFault[] {
  const acts = Object.keys(witnesses)
  const marks = acts.map(() => '?').join(', ')
  const lines = store.raw
    .prepare(`SELECT id, act, detail FROM audit WHERE act IN (${marks}) ORDER BY id`)
    .iterate(...acts) as IterableIterator<Line>
  const faults: RecordFault[] = []
  for (const line of lines) faults.push(...faultsOfLine(store, line))
  return faults
}

function faultsOfLine(store: Store, line: Line): readonly RecordFault[] {
  const witness = witnesses[line.act]
  if (witness === undefined) throw new RangeError(`faultsOfLine requires a witness of ${line.act}`)
  const detail = JSON.parse(line.detail) as Detail
  const { table, find, mayChange = [] } = witness
  const id = detail.id ?? detail.certificateId
  const of = { table, id: typeof id === 'number' ? id : null, lineId: line.id }
  const found = find(store, detail)
  if (found === undefined) return [{ kind: 'record-missing', ...of }]
  const now = JSON.parse(JSON.stringify(found)) as Readonly<Record<string, unknown>>
  const fields = Object.keys(detail).filter(
    (key) => !mayChange.includes(key) && !agrees(now[key], detail[key]),
  )
  return fields.length === 0 ? [] : [{ kind: 'record-changed', ...of, fields }]
}

/** What has been added to a record since its line was written is no difference. */
function agrees(now: unknown, then: unknown): boolean {
  if (Array.isArray(then)) {
    return (
      Array.isArray(now) &&
      now.length === then.length &&
      then.every((one, index) => agrees(now[index], one))
    )
  }
  if (typeof then !== 'object' || then === null) return now === then
  if (typeof now !== 'object' || now === null || Array.isArray(now)) return false
  const of = now as Readonly<Record<string, unknown>>
  return Object.entries(then).every(([key, value]) => agrees(of[key], value))
}
