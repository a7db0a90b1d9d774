import type { Measured } from './benchmark.ts'

/** Measures once and gives the figure in the unit of the benchmark. */
export type Measure = () => number | Promise<number>

/**
 * Measures us and the peer in turn, so that whatever else the machine does meets both, and gives
 * the medians. Who goes first changes each round. The first rounds warm up and are not counted.
 */
export async function alternate(both: {
  readonly ours: Measure
  readonly peer: Measure
  readonly rounds: number
  readonly warmUpRounds?: number
}): Promise<Measured> {
  const { ours, peer, rounds, warmUpRounds = 1 } = both
  const values: number[] = []
  const peerValues: number[] = []
  for (let round = -warmUpRounds; round < rounds; round++) {
    let value = round % 2 === 0 ? await ours() : Number.NaN
    const peerValue = await peer()
    if (round % 2 !== 0) value = await ours()
    if (round < 0) continue
    values.push(value)
    peerValues.push(peerValue)
  }
  return { value: median(values), peerValue: median(peerValues) }
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length / 2
  const upper = sorted[Math.floor(half)]!
  return Number.isInteger(half) ? (upper + sorted[half - 1]!) / 2 : upper
}
