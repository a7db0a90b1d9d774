import type { FinishOrder } from '../../../src/domain/finish-order.ts'
import { lappingWords } from './lapping.ts'

type Moment = (at: string) => string
export type FinishText = {
  readonly text: string
  /** Something is missing, or was done the wrong way round. */
  readonly isAmiss: boolean
}

/** In which order a face was read and matted, in sentences; none for one that was not matted. */
export function finishTexts(order: FinishOrder | undefined, moment: Moment): readonly FinishText[] {
  return order === undefined ? [] : [flatnessText(order, moment), roughnessText(order, moment)]
}

function flatnessText({ flatness, mattedAt }: FinishOrder, moment: Moment): FinishText {
  const { finish: w } = lappingWords
  const matted = moment(mattedAt)
  if (flatness === null) return amiss(w.noFlatness(matted))
  const read = moment(flatness.at)
  if (flatness.isSinceMatting) return amiss(w.flatnessAfter(read, matted))
  if (flatness.isReshapedSince) return amiss(w.flatnessReshaped(read, matted))
  const text = w.flatness[flatness.state ?? 'unknown'](read, matted)
  return flatness.state === 'matted' ? amiss(text) : { text, isAmiss: false }
}

function roughnessText({ finish }: FinishOrder, moment: Moment): FinishText {
  const { finish: w } = lappingWords
  if (finish === null) return amiss(w.noRoughness)
  const read = moment(finish.at)
  return finish.isSinceMatting
    ? { text: w.roughness(finish.text, read), isAmiss: false }
    : amiss(w.roughnessBefore(finish.text, read))
}

function amiss(text: string): FinishText {
  return { text, isAmiss: true }
}
