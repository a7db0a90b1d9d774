import { medianStep } from '../science/traces/median-step.ts'
import { type RunSample, runChannels } from './dynamic-run.ts'

/** What was odd about the readings of a run, by how often. */
export const runOddities = ['duplicate', 'conflict', 'late', 'gap', 'clock-back'] as const
export type RunOddity = (typeof runOddities)[number]

export type MergedRun = {
  /** In the order of time, one for each time. */
  readonly samples: readonly RunSample[]
  readonly oddities: Readonly<Partial<Record<RunOddity, number>>>
}

/**
 * Brings the batches of a run into one row of readings, in the order of time: batches come late and
 * twice, and a rig may send its channels in rows of their own. Rows of one time are joined; what says
 * the same again is counted as such, and where one says another value the first stays. Nothing is
 * left out unsaid.
 */
export function mergeRunSamples(batches: readonly (readonly RunSample[])[]): MergedRun {
  const counts = new Map<RunOddity, number>()
  const count = (kind: RunOddity) => counts.set(kind, (counts.get(kind) ?? 0) + 1)
  const byTime = new Map<number, Joined>()
  let latest = Number.NEGATIVE_INFINITY
  for (const batch of batches) {
    let before = Number.NEGATIVE_INFINITY
    const isLate = (batch[0]?.timeS ?? 0) < latest
    if (isLate) count('late')
    for (const sample of batch) {
      if (sample.timeS < before) count('clock-back')
      before = sample.timeS
      latest = Math.max(latest, sample.timeS)
      const known = byTime.get(sample.timeS)
      if (known === undefined) byTime.set(sample.timeS, { ...sample })
      else join(known, sample, count)
    }
  }
  const samples = [...byTime.values()].sort((a, b) => a.timeS - b.timeS)
  const gaps = gapCount(samples.map((one) => one.timeS))
  if (gaps > 0) counts.set('gap', gaps)
  return { samples, oddities: Object.fromEntries(counts) }
}

/** Steps longer than three usual ones, of times that rise. */
function gapCount(timesS: readonly number[]): number {
  const usualS = medianStep(timesS)
  if (usualS === null) return 0
  return timesS.filter((at, i) => i > 0 && at - (timesS[i - 1] as number) > 3 * usualS).length
}

type Joined = { -readonly [name in keyof RunSample]: RunSample[name] }

function join(known: Joined, sample: RunSample, count: (kind: RunOddity) => void): void {
  const sent = runChannels.filter((channel) => sample[channel] !== undefined)
  if (sent.some((channel) => known[channel] !== undefined && known[channel] !== sample[channel])) {
    count('conflict')
  } else if (sent.every((channel) => known[channel] !== undefined)) count('duplicate')
  for (const channel of sent) known[channel] ??= sample[channel]
}
