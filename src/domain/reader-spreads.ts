import { repeatedReadings } from '../science/statistics/repeated-readings.ts'
import { currentOnly } from './current-only.ts'
import { cycleBefore } from './cycle-before.ts'
import type { FlatnessReading, ReadingCondition } from './flatness.ts'
import type { FlatnessSees } from './flatness-sees.ts'
import type { LapCycle } from './lap-cycle.ts'
import type { FaceKind } from './seal.ts'

/** What several people read on one and the same face. */
export type ReaderSpread = {
  readonly componentId: number
  readonly faceKind: FaceKind
  readonly condition: ReadingCondition
  readonly sees: FlatnessSees
  /** The newest of each reader, oldest first; two or more. */
  readonly readings: readonly FlatnessReading[]
  readonly meanUm: number
  /** Of one reading. */
  readonly standardDeviationUm: number
  /** One less than there are readers. */
  readonly degreesOfFreedom: number
}

/**
 * Faces that two people or more have read in the state that they are in: of one condition, by one
 * kind of method, and not lapped in between as far as the log says. Each person counts once, by
 * their newest reading that no correction replaced; unreadable ones have no figure and don't count.
 * It decides nothing: for the release the newest reading as left counts, whoever took it.
 */
export function readerSpreads(records: {
  readonly flatnessReadings: readonly FlatnessReading[]
  readonly lapCycles: readonly LapCycle[]
}): readonly ReaderSpread[] {
  const { flatnessReadings: readings, lapCycles: cycles } = records
  const groups = new Map<string, { readonly state: number; of: FlatnessReading[] }>()
  for (const one of currentOnly(readings).filter((each) => each.flatnessUm !== null)) {
    const key = `${one.componentId} ${one.condition} ${one.sees}`
    const state = cycleBefore(one, { readings, cycles })?.cycle.id ?? 0
    const known = groups.get(key)
    // The newest reading tells which state the face is in: what was read before a lap is another's.
    const same = known?.state === state ? known.of : []
    const others = same.filter((each) => each.recordedById !== one.recordedById)
    groups.set(key, { state, of: [...others, one] })
  }
  return [...groups.values()].flatMap(({ of }) => spreadOf(of))
}

function spreadOf(readings: readonly FlatnessReading[]): readonly ReaderSpread[] {
  const [first] = readings
  if (first === undefined || readings.length < 2) return []
  const { componentId, faceKind, condition, sees } = first
  const { mean, standardDeviation, degreesOfFreedom } = repeatedReadings(
    readings.map((one) => one.flatnessUm ?? Number.NaN),
  )
  return [
    {
      ...{ componentId, faceKind, condition, sees, readings },
      meanUm: mean,
      standardDeviationUm: standardDeviation,
      degreesOfFreedom,
    },
  ]
}
