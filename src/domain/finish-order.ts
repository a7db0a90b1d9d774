import type { Evidence } from './evidence.ts'
import type { FaceState } from './face-state.ts'
import { faceStateByLog } from './face-state-by-log.ts'
import { firstRecordedAt } from './first-recorded-at.ts'
import { type PlacedCycle, placedCycles } from './placed-cycles.ts'
import { printedResult } from './printed-result.ts'
import { standingReadings, standingValues } from './standing.ts'

/** What was read of a face that leaves matted, before and after it was matted. */
export type FinishOrder = {
  /** Its newest matting. */
  readonly mattedAt: string
  /** The flatness that speaks for the face as left; null where there is none. */
  readonly flatness: FaceRead | null
  /** The roughness that speaks for the face as left; null where there is none. */
  readonly finish: (FaceRead & { readonly text: string }) | null
}

export type FaceRead = {
  readonly at: string
  /** How the face was by the log; null where no cycle came before. */
  readonly state: FaceState | null
  /** Read after its newest matting, or at the same instant. */
  readonly isSinceMatting: boolean
  /** It was lapped or polished after it was read, and matted then. */
  readonly isReshapedSince: boolean
}

export type FinishRecords = Pick<Evidence, 'flatnessReadings' | 'measuredValues' | 'lapCycles'>

/**
 * In which order a face was read and matted: bands are read on a polished face, and some are matted
 * for service afterwards. Null for a face that does not leave matted: one that was not, or was
 * lapped or polished since. It is derived from when things were first written down, as the tie to
 * lap cycles is (D23).
 */
export function finishOrder(records: FinishRecords, componentId: number): FinishOrder | null {
  const { flatnessReadings, measuredValues, lapCycles } = records
  const cycles = placedCycles(lapCycles, componentId)
  const last = cycles.at(-1)
  if (last?.cycle.purpose !== 'matt') return null
  const isMine = (one: { componentId: number | null; condition: string }) =>
    one.componentId === componentId && one.condition === 'as-left'
  const flat = standingReadings(records).filter(isMine)
  const first = flat.find((one) => one.sees === 'whole-surface') ?? flat.at(-1)
  const rough = standingValues(measuredValues)
    .filter((one) => one.characteristic === 'roughness')
    .find(isMine)
  return {
    mattedAt: last.lappedAt,
    flatness: first === undefined ? null : faceRead(first, flatnessReadings, lapCycles, cycles),
    finish:
      rough === undefined
        ? null
        : {
            ...faceRead(rough, measuredValues, lapCycles, cycles),
            text: printedResult({ ...rough, value: rough.valueUm }).text,
          },
  }
}

function faceRead<T extends Parameters<typeof faceStateByLog>[0]>(
  one: T,
  readings: readonly T[],
  cycles: Evidence['lapCycles'],
  placed: readonly PlacedCycle[],
): FaceRead {
  const at = firstRecordedAt(readings, one)
  return {
    at,
    state: faceStateByLog(one, { readings, cycles }),
    isSinceMatting: placed.every(({ lappedAt }) => lappedAt <= at),
    isReshapedSince: placed.some(({ cycle, lappedAt }) => {
      return cycle.purpose !== 'matt' && lappedAt > at
    }),
  }
}
