import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { firstRecordedAt } from './first-recorded-at.ts'
import { placedCycles } from './placed-cycles.ts'

/** When a face was polished and matted, and what was read of it before and after. */
export type FinishOrder = {
  /** Its newest matting. */
  readonly mattedAt: string
  /** The newest polishing before it; null where none was written down. */
  readonly polishedAt: string | null
  /** The newest flatness as left, and whether it was read before the face was matted. */
  readonly flatness: { readonly at: string; readonly isBeforeMatting: boolean } | null
  /** The newest roughness as left, and whether it was read of the matted face. */
  readonly finish: { readonly at: string; readonly isAfterMatting: boolean } | null
}

/**
 * In which order a face was read and matted: bands are read on a polished face, and some are matted
 * for service afterwards. Null for a face that was not matted. It is derived from when things were
 * first written down, as the tie to lap cycles is.
 */
export function finishOrder(
  {
    flatnessReadings,
    measuredValues,
    lapCycles,
  }: Pick<Evidence, 'flatnessReadings' | 'measuredValues' | 'lapCycles'>,
  componentId: number,
): FinishOrder | null {
  const cycles = placedCycles(lapCycles, componentId)
  const matting = cycles.findLast((one) => one.cycle.purpose === 'matt')
  if (matting === undefined) return null
  const mattedAt = matting.lappedAt
  const polished = cycles.findLast(
    (one) => one.cycle.purpose === 'polish' && one.lappedAt <= mattedAt,
  )
  const isMine = (one: { componentId: number | null; condition: string }) =>
    one.componentId === componentId && one.condition === 'as-left'
  const flat = currentOnly(flatnessReadings).findLast(
    (one) => isMine(one) && one.flatnessUm !== null,
  )
  const rough = currentOnly(measuredValues).findLast(
    (one) => isMine(one) && one.characteristic === 'roughness',
  )
  const flatAt = flat === undefined ? null : firstRecordedAt(flatnessReadings, flat)
  const roughAt = rough === undefined ? null : firstRecordedAt(measuredValues, rough)
  return {
    mattedAt,
    polishedAt: polished?.lappedAt ?? null,
    flatness: flatAt === null ? null : { at: flatAt, isBeforeMatting: flatAt <= mattedAt },
    finish: roughAt === null ? null : { at: roughAt, isAfterMatting: roughAt >= mattedAt },
  }
}
