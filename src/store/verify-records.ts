import { eq } from 'drizzle-orm'
import type { AuditAct } from '../domain/audit-act.ts'
import type { RecordFault } from '../domain/store-fault.ts'
import { fileHash } from './file-hash.ts'
import { listFacePhotos } from './list-face-photos.ts'
import { listFlatnessReadings } from './list-flatness-readings.ts'
import { listLapCycles } from './list-lap-cycles.ts'
import { listMeasuredValues } from './list-measured-values.ts'
import { listStaticTests } from './list-static-tests.ts'
import type { Store } from './open.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { requireSeal } from './require-seal.ts'
import { agreedRule } from './schema/agreed-rule.ts'
import { calibration } from './schema/calibration.ts'
import { certificate } from './schema/certificate.ts'
import { concession } from './schema/concession.ts'
import { customer } from './schema/customer.ts'
import { decision } from './schema/decision.ts'
import { doubtAnswer } from './schema/doubt-answer.ts'
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

const flatness: Witness = {
  table: 'flatness_reading',
  find: (store, { id, workOrderId }) =>
    listFlatnessReadings(store, Number(workOrderId)).find((one) => one.id === id),
  mayChange: ['replacedById'],
}
const staticTest: Witness = {
  table: 'static_test',
  find: (store, { id, workOrderId }) =>
    listStaticTests(store, Number(workOrderId)).find((one) => one.id === id),
  mayChange: ['replacedById'],
}
const measuredValue: Witness = {
  table: 'measured_value',
  find: (store, { id, workOrderId }) =>
    listMeasuredValues(store, Number(workOrderId)).find((one) => one.id === id),
  mayChange: ['replacedById'],
}
const photo: Witness = {
  table: 'face_photo',
  find: (store, { id, workOrderId }) =>
    listFacePhotos(store, Number(workOrderId)).find((one) => one.id === id),
}
const lapCycle: Witness = {
  table: 'lap_cycle',
  find: (store, { id, workOrderId }) =>
    listLapCycles(store, Number(workOrderId)).find((one) => one.id === id),
  mayChange: ['replacedById'],
}
const decided: Witness = {
  table: 'decision',
  find: ({ db }, { id }) => db.select().from(decision).where(eq(decision.id, id)).get(),
}

const limitStep: Witness = {
  table: 'limit_set_step',
  find: ({ db }, { id }) => db.select().from(limitSetStep).where(eq(limitSetStep.id, id)).get(),
}

/** Each act whose line holds the whole record that it wrote. */
const witnesses: Readonly<Partial<Record<AuditAct, Witness>>> = {
  'add-customer': {
    table: 'customer',
    find: ({ db }, { id }) => db.select().from(customer).where(eq(customer.id, id)).get(),
  },
  'add-equipment': {
    table: 'equipment',
    find: ({ db }, { id }) => db.select().from(equipment).where(eq(equipment.id, id)).get(),
  },
  'add-seal': {
    table: 'seal',
    find: (store, { id }) => {
      const found = store.db.select({ id: seal.id }).from(seal).where(eq(seal.id, id)).get()
      return found === undefined ? undefined : requireSeal(store, id)
    },
  },
  'add-instrument': {
    table: 'instrument',
    find: ({ db }, { id }) => db.select().from(instrument).where(eq(instrument.id, id)).get(),
    mayChange: ['withdrawnOn'],
  },
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
  'add-face-photo': photo,
  'add-lap-cycle': lapCycle,
  'correct-lap-cycle': lapCycle,
  release: decided,
  refuse: decided,
  'agree-rule': {
    table: 'agreed_rule',
    find: ({ db }, { id }) => db.select().from(agreedRule).where(eq(agreedRule.id, id)).get(),
  },
  'add-concession': {
    table: 'concession',
    find: ({ db }, { id }) => db.select().from(concession).where(eq(concession.id, id)).get(),
  },
  'ask-use-exception': {
    table: 'use_exception',
    find: ({ db }, { id }) => db.select().from(useException).where(eq(useException.id, id)).get(),
  },
  'answer-use-exception': {
    table: 'use_exception_answer',
    find: ({ db }, { id }) =>
      db.select().from(useExceptionAnswer).where(eq(useExceptionAnswer.id, id)).get(),
  },
  'hand-over': {
    table: 'hand_over',
    find: ({ db }, { id }) => db.select().from(handOver).where(eq(handOver.id, id)).get(),
  },
  'add-work-order': {
    table: 'work_order',
    find: ({ db }, { id }) => db.select().from(workOrder).where(eq(workOrder.id, id)).get(),
    mayChange: ['stage', 'decontamination', 'lastFluid'],
  },
  'add-calibration': {
    table: 'calibration',
    find: ({ db }, { id }) => db.select().from(calibration).where(eq(calibration.id, id)).get(),
  },
  'amend-instrument': {
    table: 'instrument_amendment',
    find: ({ db }, { id }) =>
      db.select().from(instrumentAmendment).where(eq(instrumentAmendment.id, id)).get(),
  },
  'set-instrument-holder': {
    table: 'instrument_holder',
    find: ({ db }, { id }) =>
      db.select().from(instrumentHolder).where(eq(instrumentHolder.id, id)).get(),
  },
  'add-instrument-file': {
    table: 'instrument_file',
    find: ({ db }, { id }) =>
      db.select().from(instrumentFile).where(eq(instrumentFile.id, id)).get(),
  },
  'answer-doubt': {
    table: 'doubt_answer',
    find: ({ db }, { id }) => db.select().from(doubtAnswer).where(eq(doubtAnswer.id, id)).get(),
  },
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
