import type { FinishOrder } from '../../../src/domain/finish-order.ts'
import { lappingWords } from './lapping.ts'

type Moment = (at: string) => string

/** In which order a face was read and matted, in sentences; none for one that was not matted. */
export function finishTexts(order: FinishOrder | undefined, moment: Moment): readonly string[] {
  return order === undefined ? [] : [flatnessText(order, moment), roughnessText(order, moment)]
}

function flatnessText({ flatness, mattedAt }: FinishOrder, moment: Moment): string {
  const { finish: w } = lappingWords
  const matted = moment(mattedAt)
  if (flatness === null) return w.noFlatness(matted)
  const read = moment(flatness.at)
  if (flatness.isSinceMatting) return w.flatnessAfter(read, matted)
  if (flatness.isReshapedSince) return w.flatnessReshaped(read, matted)
  return w.flatness[flatness.state ?? 'unknown'](read, matted)
}

function roughnessText({ finish }: FinishOrder, moment: Moment): string {
  const { finish: w } = lappingWords
  if (finish === null) return w.noRoughness
  const tell = finish.isSinceMatting ? w.roughness : w.roughnessBefore
  return tell(finish.text, moment(finish.at))
}
