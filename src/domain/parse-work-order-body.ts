import { confirmField } from './confirmed.ts'
import type { Fault } from './fault.ts'
import { type Input, openFields } from './fields.ts'
import { type ParsedEquipment, parseEquipment } from './parse-equipment.ts'
import { idBounds } from './parse-instrument-id.ts'
import { receiptFields } from './parse-receipt.ts'
import { type ParsedSeal, parseSeal } from './parse-seal.ts'
import type { Parsed } from './parsed.ts'

/** Who sends what: a seal that is known, or a new one, perhaps of a new equipment position. */
export type WorkOrderSubject = {
  readonly customerId: number
  readonly sealId: number | null
  readonly seal: ParsedSeal | null
  readonly equipmentId: number | null
  readonly equipment: ParsedEquipment | null
}

const subjectFields = ['customerId', 'sealId', 'seal', 'equipmentId', 'equipment'] as const

/** Reads who and which seal a work order is for; the rest of the body is the receipt's. */
export function parseWorkOrderSubject(input: Input): Parsed<WorkOrderSubject> {
  const fields = openFields(input)
  fields.only(...subjectFields, ...receiptFields, confirmField)
  const customerId = fields.whole('customerId', idBounds)
  const sealId = fields.optionalWhole('sealId', idBounds)
  const equipmentId = fields.optionalWhole('equipmentId', idBounds)
  if ((sealId === null) === (input.seal == null)) {
    fields.fault('sealId', 'one-of-two', { one: 'sealId', other: 'seal' })
  }
  if (equipmentId !== null && input.equipment != null) {
    fields.fault('equipmentId', 'one-of-two', { one: 'equipmentId', other: 'equipment' })
  }
  // A known seal stands where it was recorded: another position would be dropped in silence.
  if (sealId !== null) {
    for (const name of ['equipmentId', 'equipment']) {
      if (input[name] != null) fields.fault(name, 'not-here')
    }
  }
  const confirmed = input[confirmField]
  const seal = input.seal == null ? null : parsePart(input.seal, 'seal', parseSeal, confirmed)
  const equipment =
    input.equipment == null ? null : parsePart(input.equipment, 'equipment', parseEquipment)
  const faults = [...fields.faults, ...(seal?.faults ?? []), ...(equipment?.faults ?? [])]
  if (faults.length > 0) return { ok: false, faults }
  const value = {
    customerId,
    sealId,
    equipmentId,
    seal: seal?.value ?? null,
    equipment: equipment?.value ?? null,
  }
  return { ok: true, value }
}

/** The receipt's part of the same body. */
export function receiptPart(input: Input): Input {
  const names: readonly string[] = [...receiptFields, confirmField]
  return Object.fromEntries(Object.entries(input).filter(([name]) => names.includes(name)))
}

function parsePart<T>(
  part: unknown,
  path: string,
  parse: (input: Input) => Parsed<T>,
  confirmed?: unknown,
): { value: T | null; faults: readonly Fault[] } {
  if (typeof part !== 'object' || part === null || Array.isArray(part)) {
    return { value: null, faults: [{ field: path, kind: 'empty' }] }
  }
  const input = confirmed === undefined ? part : { ...part, [confirmField]: confirmed }
  const parsed = parse(input as Input)
  if (parsed.ok) return { value: parsed.value, faults: [] }
  return {
    value: null,
    faults: parsed.faults.map((one) => ({ ...one, field: `${path}.${one.field}` })),
  }
}
