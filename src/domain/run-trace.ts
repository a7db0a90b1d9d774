import type { ComputedRun } from './compute-dynamic-run.ts'
import type { RunChannel } from './dynamic-run.ts'

/** One channel of a run as it is drawn; null where it has fewer than two times. */
export function runTrace(computed: ComputedRun, channel: RunChannel) {
  const { samples, leak } = computed
  const [first, last] = [samples[0], samples.at(-1)]
  if (first === undefined || last === undefined || last.timeS <= first.timeS) return null
  const [fromS, toS] = [first.timeS, last.timeS]
  const steady = channel === 'massG' ? (leak?.steadyGPerS ?? null) : null
  const lastMass = samples.findLast((one) => one.massG !== undefined)
  const end = lastMass?.massG
  return {
    timesS: samples.map((one) => one.timeS),
    values: samples.map((one) => one[channel] ?? Number.NaN),
    fromS,
    toS,
    // The steady rate through the last weighing: what the run-in lies above.
    fitted:
      steady === null || end === undefined || lastMass === undefined
        ? null
        : {
            fromValue: end - steady * (lastMass.timeS - fromS),
            toValue: end + steady * (toS - lastMass.timeS),
          },
  }
}
