import type { LandCells } from './land-cells.ts'
import type { RingSamples } from './sample-ring.ts'

/** Below this share of the swing of the light a sector, or the step to the next, shows no band. */
const calmBelow = 0.15
/** What the light does at least where a hidden part ends, over its swing. */
const leastDeviation = 0.3
const leastStep = 0.4
/** Share of the sectors beside a hidden part in which there must be bands. */
const leastBusyShare = 0.5

interface Sector {
  /** Mean and standard deviation over the mean light of the land; NaN where nothing is usable. */
  readonly level: number
  readonly deviation: number
}

function sectorsOf(samples: RingSamples, land: LandCells): Sector[] {
  const { sectorCount, cellOf } = land
  const sums = Array.from({ length: sectorCount }, () => ({ count: 0, sum: 0, squares: 0 }))
  let [count, sum] = [0, 0]
  for (let i = 0; i < samples.values.length; i++) {
    if (samples.isUsable[i] === 0) continue
    const value = samples.values[i] as number
    const of = sums[(cellOf[i] as number) % sectorCount] as (typeof sums)[number]
    of.count++
    of.sum += value
    of.squares += value * value
    count++
    sum += value
  }
  const mean = sum / count
  return sums.map((of) => {
    const level = of.sum / of.count
    const variance = Math.max(0, of.squares / of.count - level * level)
    return { level: level / mean, deviation: Math.sqrt(variance) / mean }
  })
}

/**
 * Gives the longest part of a ring that hangs together and shows no band at all, while bands begin
 * at once on both of its sides: a hand, a sheet of paper, the shadow of the camera.
 *
 * @param samples light over the land
 * @param land its cells
 * @param swing of the light over the land, relative to its mean, above 0
 * @returns degrees around the ring, in steps of a sector; 0 where there is no such part
 * Validity: where two bands or more cross the face; a single band leaves calm parts of its own.
 * Source: own method; its limits were chosen on synthetic photographs.
 * @example hiddenArc({ xs: new Float64Array(1), ys: new Float64Array(1), pitch: 1,
 *   values: new Float64Array([0.5]), isUsable: new Uint8Array([1]) }, { sectorCount: 1, rowCount: 1,
 *   cellOf: new Int32Array(1), totals: new Int32Array([1]) }, 0.5) // 0
 */
export function hiddenArc(samples: RingSamples, land: LandCells, swing: number): number {
  const count = land.sectorCount
  const sectors = sectorsOf(samples, land)
  const at = (k: number) => sectors[((k % count) + count) % count] as Sector
  const isCalm = (k: number) => at(k).deviation < calmBelow * swing
  const step = (a: number, b: number) => Math.abs(at(a).level - at(b).level) / swing
  const isLinked = (k: number) => isCalm(k) && isCalm(k + 1) && step(k, k + 1) < calmBelow
  const begins = (k: number, side: 1 | -1) =>
    [side, 2 * side].some(
      (by) => at(k + by).deviation > leastDeviation * swing || step(k, k + by) > leastStep,
    )
  let longest = 0
  for (let first = 0; first < count; first++) {
    if (!isCalm(first) || isLinked(first - 1)) continue
    let length = 1
    while (length < count && isLinked(first + length - 1)) length++
    // A sector on each side may be hidden by a part.
    const beside = Array.from({ length: Math.max(0, count - length - 2) }, (_, i) => {
      return first + length + 1 + i
    })
    const busy = beside.filter((k) => !isCalm(k)).length
    const isClear = begins(first, -1) && begins(first + length - 1, 1)
    if (isClear && busy >= leastBusyShare * beside.length) longest = Math.max(longest, length)
  }
  return (longest * 360) / count
}
