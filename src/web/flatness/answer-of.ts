import type { FlatnessAnswer } from '../../../views/flatness/answer.tsx'
import { canBeChosen } from '../../domain/can-be-chosen.ts'
import { carriedFlatnessBudget } from '../../domain/carried-flatness-budget.ts'
import { computeFlatness } from '../../domain/compute-flatness.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import { flatAccuracy } from '../../domain/flat-accuracy.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import { flatnessFormBudget } from '../../domain/flatness-form-budget.ts'
import type { Instrument, InstrumentKind } from '../../domain/instrument.ts'
import { judgeFlatness } from '../../domain/judge-flatness.ts'
import { directionCount } from '../../domain/parse-directions.ts'
import { parseFlatnessFigures } from '../../domain/parse-flatness-figures.ts'
import { useOf } from '../../domain/use-of.ts'
import { type LampId, lampIds } from '../../science/optics/lamps.ts'
import { typedText } from '../typed-text.ts'
import { budgetSoFar } from './budget-so-far.ts'
import type { FlatnessDesk } from './desk.ts'
import { dropEmptyDirections } from './drop-empty-directions.ts'
import { askedSpread, budgetWithSpread, spreadsBeside } from './reader-spread.ts'

/** What can be said of a reading of which perhaps not all is entered yet. */
export function answerOf(
  input: Input,
  desk: FlatnessDesk,
  replaced: FlatnessReading | undefined,
): FlatnessAnswer {
  const lamp = chosen(desk, 'lamp', input.lampInstrumentId)
  const flat = chosen(desk, 'optical-flat', input.opticalFlatInstrumentId)
  const { today, exceptions } = desk
  const uses = [lamp, flat]
    .filter((one) => one !== undefined)
    .map((one) => useOf(one, { day: today, recordedOn: today, exceptions }))
  const lampId = lampIds.find((id) => id === lamp?.lampId)
  const asked = flatnessFormBudget(dropEmptyDirections(input), desk.components)
  const spread = askedSpread(input, spreadsBeside(desk, replaced?.id))
  return { uses, outcome: outcomeOf(asked, desk, { lampId, flat, replaced, asked: spread }) }
}

function outcomeOf(
  input: Input,
  desk: FlatnessDesk,
  {
    lampId,
    flat,
    replaced,
    asked,
  }: {
    readonly lampId: LampId | undefined
    readonly flat: Instrument | undefined
    readonly replaced: FlatnessReading | undefined
    readonly asked: ReturnType<typeof askedSpread>
  },
): FlatnessAnswer['outcome'] {
  const pattern = typedText(input.pattern)
  if (pattern === '') return { kind: 'ask', ask: 'pattern' }
  if (lampId === undefined) return { kind: 'ask', ask: 'lamp' }
  const fields = openFields(input)
  const parsed = fields.finish(parseFlatnessFigures(fields))
  if (!parsed.ok) {
    // What is still empty is no mistake yet: it is asked for.
    const faults = parsed.faults.filter((one) => one.kind !== 'empty')
    if (faults.length > 0) return { kind: 'faulty', faults, pattern }
    const isFirstRead = !parsed.faults.some((one) => one.field.startsWith('readings[0]'))
    return { kind: 'ask', ask: pattern === 'saddle' && isFirstRead ? 'second' : 'count' }
  }
  const so = budgetSoFar(input)
  const faults = [...so.faults, ...asked.faults]
  if (faults.length > 0) return { kind: 'faulty', faults, pattern }
  const budget = budgetWithSpread(so.budget, asked.spread, { ...parsed.value, lampId })
  const figures = { ...parsed.value, budgetInput: carriedFlatnessBudget(budget, replaced) }
  const known = flat === undefined ? unknownFlat : flatAccuracy(flat, desk.today)
  const computed = computeFlatness(figures, { lampId, ...known })
  const face = desk.faces.find((one) => String(one.id) === typedText(input.faceId))
  return {
    kind: 'figures',
    pattern: figures.pattern,
    unreadableCause: figures.unreadableCause,
    computed,
    judged: face === undefined ? null : judgeFlatness({ ...computed, componentId: face.id }, desk),
    readCount: directionCount(figures.directions),
    requiredCount: desk.limitSet.directionsRequiredCount,
  }
}

const unknownFlat = { flatToleranceUm: null, flatStandardUncertaintyUm: null }

function chosen(desk: FlatnessDesk, kind: InstrumentKind, id: unknown): Instrument | undefined {
  return desk.instruments.find(
    (one) =>
      one.kind === kind &&
      String(one.id) === typedText(id) &&
      canBeChosen(one, { ...desk, day: desk.today, recordedOn: desk.today }),
  )
}
