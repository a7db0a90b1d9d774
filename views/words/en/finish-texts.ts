import type { FinishOrder } from '../../../src/domain/finish-order.ts'
import { lappingWords } from './lapping.ts'

/** In which order a face was read and matted, in sentences; none for one that was not matted. */
export function finishTexts(
  order: FinishOrder | undefined,
  moment: (at: string) => string,
): readonly string[] {
  if (order === undefined) return []
  const { finish: w } = lappingWords
  const { polishedAt, flatness, finish } = order
  const matted = moment(order.mattedAt)
  const polished = polishedAt === null ? null : moment(polishedAt)
  const texts: string[] = []
  if (flatness === null) texts.push(w.notRead(matted))
  else if (flatness.isBeforeMatting) texts.push(w.before(polished, moment(flatness.at), matted))
  else texts.push(w.after(moment(flatness.at), matted))
  if (finish === null) texts.push(w.noRoughness)
  else if (finish.isAfterMatting) texts.push(w.roughness(moment(finish.at)))
  else texts.push(w.roughnessBefore(moment(finish.at)))
  return texts
}
