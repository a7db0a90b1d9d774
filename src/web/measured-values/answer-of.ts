import type {
  MeasuredAnswer,
  MeasuredFiguresShown,
} from '../../../views/measured-values/answer.tsx'
import { canBeChosen } from '../../domain/can-be-chosen.ts'
import { measuredCharacteristics } from '../../domain/characteristic.ts'
import { computeMeasuredValue } from '../../domain/compute-measured-value.ts'
import { isConfirmed } from '../../domain/confirmed.ts'
import { expansionOf } from '../../domain/expansion-of.ts'
import { faceStates, stateAfter } from '../../domain/face-state.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import { finishTraces } from '../../domain/finish-traces.ts'
import type { Instrument } from '../../domain/instrument.ts'
import { judgeMeasuredValue } from '../../domain/judge-measured-value.ts'
import { measuredAccuracy } from '../../domain/measured-accuracy.ts'
import { familyOf, fittingKinds } from '../../domain/measured-family.ts'
import { isOfFace, parseMeasuredFigures } from '../../domain/parse-measured-figures.ts'
import { placedCycles } from '../../domain/placed-cycles.ts'
import { useOf } from '../../domain/use-of.ts'
import { typedText } from '../typed-text.ts'
import type { MeasuredDesk } from './desk.ts'
import { dropEmptyReadings } from './drop-empty-readings.ts'

/** What can be said of a value of which perhaps not all is entered yet. */
export function answerOf(input: Input, desk: MeasuredDesk): MeasuredAnswer {
  const instrument = chosen(input, desk)
  const { today, exceptions } = desk
  const uses =
    instrument === undefined
      ? []
      : [useOf(instrument, { day: today, recordedOn: today, exceptions })]
  return { uses, outcome: outcomeOf(dropEmptyReadings(input), desk, instrument) }
}

function outcomeOf(
  input: Input,
  desk: MeasuredDesk,
  instrument: Instrument | undefined,
): MeasuredAnswer['outcome'] {
  const characteristic = measuredCharacteristics.find((one) => one === input.characteristic)
  if (characteristic === undefined) return { kind: 'ask', ask: 'characteristic' }
  const fields = openFields(input, isConfirmed(input))
  const parsed = fields.finish(parseMeasuredFigures(fields, characteristic, instrument))
  if (!parsed.ok) {
    // What is still empty is no mistake yet: it is asked for.
    const faults = parsed.faults.filter((one) => one.kind !== 'empty')
    return faults.length > 0 ? { kind: 'faulty', faults } : { kind: 'ask', ask: 'reading' }
  }
  const isFitting = fittingKinds[familyOf[characteristic]].some((one) => one === instrument?.kind)
  if (instrument === undefined || !isFitting) return { kind: 'ask', ask: 'instrument' }
  const figures = { ...parsed.value, characteristic }
  const faceId = desk.faces.find((one) => String(one.id) === typedText(input.componentId))?.id
  const isFaceMissing = isOfFace(characteristic) && faceId === undefined
  const componentId = isOfFace(characteristic) ? (faceId ?? null) : null
  const computed = computeMeasuredValue(
    { ...figures, expansionPerK: expansionOf(desk.components, componentId) },
    measuredAccuracy(instrument, desk.today, figures),
  )
  const judged = isFaceMissing
    ? null
    : judgeMeasuredValue({ ...figures, ...computed, componentId }, desk)
  return {
    kind: 'figures',
    characteristic,
    valueUm: computed.valueUm,
    uncertainty: computed.uncertainty,
    readCount: figures.readings.length,
    judged,
    traces: finishTraces(figures, judged?.upper ?? null),
    face: characteristic === 'roughness' ? faceOf(input, desk, componentId) : null,
  }
}

/** How the face is by the log, and as it is said to be; a correction is of an earlier time. */
function faceOf(
  input: Input,
  { lapCycles }: MeasuredDesk,
  componentId: number | null,
): MeasuredFiguresShown['face'] {
  const isNow = typedText(input.condition) === 'as-left' && typedText(input.replacesId) === ''
  const last = placedCycles(lapCycles, componentId ?? 0).at(-1)
  if (!isNow || last === undefined) return null
  return {
    byLog: stateAfter[last.cycle.purpose],
    at: last.lappedAt,
    stated: faceStates.find((one) => one === input.faceState) ?? null,
  }
}

function chosen(input: Input, desk: MeasuredDesk): Instrument | undefined {
  const id = typedText(input.instrumentId)
  return desk.instruments.find(
    (one) =>
      String(one.id) === id &&
      canBeChosen(one, { ...desk, day: desk.today, recordedOn: desk.today }),
  )
}
