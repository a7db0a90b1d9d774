import { type EdgeWave, edgeWave } from '../edge-wave.ts'
import type { Ellipse } from '../ellipse.ts'
import { fitEllipse } from '../fit-ellipse.ts'
import type { LightSteps } from './light-steps.ts'

/** A closed curve of steps in light, and the share of directions in which a step was seen. */
export interface RingSeen {
  readonly ellipse: Ellipse
  readonly share: number
}

const angleCount = 180
const leastShare = 0.4

/** Steps in light across the rays from a place, from 0 to 1, one row a ray. */
function raysFrom(steps: LightSteps, middle: readonly [number, number], reach: number) {
  const { right, down, width, height, usual } = steps
  const rows = new Float32Array(angleCount * reach)
  const floor = Math.max(2.5 * usual, 0.15 * steps.steep, 1e-3)
  for (let j = 0; j < angleCount; j++) {
    const c = Math.cos((2 * Math.PI * j) / angleCount)
    const s = Math.sin((2 * Math.PI * j) / angleCount)
    for (let r = 8; r < reach; r++) {
      const x = Math.round(middle[0] + r * c)
      const y = Math.round(middle[1] - r * s)
      if (x < 0 || y < 0 || x >= width || y >= height) break
      const gx = right[y * width + x] as number
      const gy = down[y * width + x] as number
      const size = Math.hypot(gx, gy)
      const across = Math.abs(gx * c - gy * s)
      if (across < 0.93 * size) continue
      rows[j * reach + r] = across / (across + floor)
    }
  }
  return rows
}

/** Every row smoothed by a running mean. */
function smoothed(rows: Float32Array, reach: number, half: number): Float32Array {
  const to = new Float32Array(rows.length)
  for (let row = 0; row < rows.length; row += reach) {
    let sum = 0
    for (let i = 0; i < half; i++) sum += rows[row + i] as number
    for (let i = 0; i < reach; i++) {
      if (i + half < reach) sum += rows[row + i + half] as number
      if (i - half - 1 >= 0) sum -= rows[row + i - half - 1] as number
      to[row + i] = sum / (2 * half + 1)
    }
  }
  return to
}

const angles = Array.from({ length: angleCount }, (_, j) => (2 * Math.PI * j) / angleCount)

/** Cosines and sines of once and twice each angle, so that bending asks for none. */
const turns = angles.map((angle) => {
  return [Math.cos(angle), Math.sin(angle), Math.cos(2 * angle), Math.sin(2 * angle)] as const
})

function meanAlong(rows: Float32Array, reach: number, radius: number, wave: EdgeWave): number {
  const [s0, a, b, c, d] = wave
  let sum = 0
  for (let j = 0; j < angleCount; j++) {
    const [once, onceSine, twice, twiceSine] = turns[j] as (typeof turns)[number]
    const off = s0 + a * once + b * onceSine + c * twice + d * twiceSine
    const r = Math.round(radius * (1 + off))
    if (r >= 0 && r < reach) sum += rows[j * reach + r] as number
  }
  return sum / angleCount - 0.02 * ((a * a + b * b) / 0.0025 + (c * c + d * d) / 0.00015)
}

/** Steps smeared along the rays, by so many pixels to both sides, twice. */
interface Blurred {
  readonly half: number
  readonly soft: Float32Array
}

/** Bends a circle until it runs along as many steps as it can. */
function bend(blurred: readonly Blurred[], reach: number, radius: number): EdgeWave {
  let best: EdgeWave = [0, 0, 0, 0, 0]
  for (const { half, soft } of blurred) {
    let height = meanAlong(soft, reach, radius, best)
    let stride = half / radius
    while (stride > half / (3 * radius)) {
      let isBetter = false
      for (let k = 0; k < 10; k++) {
        const tried = best.map((v, i) =>
          i === k >> 1 ? v + (k % 2 === 0 ? stride : -stride) : v,
        ) as unknown as EdgeWave
        const sum = meanAlong(soft, reach, radius, tried)
        if (sum <= height) continue
        height = sum
        best = tried
        isBetter = true
      }
      if (!isBetter) stride /= 2
    }
  }
  return best
}

/** The share of rays with a clear step within two pixels of the curve. */
function shareSeen(rows: Float32Array, reach: number, radius: number, wave: EdgeWave): number {
  let seen = 0
  for (let j = 0; j < angleCount; j++) {
    const r = Math.round(radius * (1 + edgeWave(wave, angles[j] as number)))
    let most = 0
    for (let i = Math.max(0, r - 2); i <= Math.min(reach - 1, r + 2); i++) {
      most = Math.max(most, rows[j * reach + i] as number)
    }
    if (most > 0.5) seen++
  }
  return seen / angleCount
}

function ellipseOf(middle: readonly [number, number], radius: number, wave: EdgeWave) {
  return fitEllipse(
    angles.map((angle) => {
      const r = radius * (1 + edgeWave(wave, angle))
      return [middle[0] + r * Math.cos(angle), middle[1] - r * Math.sin(angle)] as const
    }),
  )
}

/**
 * Finds closed curves around a place along which light steps: edges of lands, of chamfers, of the
 * optical flat.
 *
 * @param steps slopes of brightness
 * @param middle pixels, where the curves are about centred
 * @param count how many curves at most
 * @returns the curves, those seen in most directions first, each seen in at least 0.4 of them
 * Source: own method, tried on synthetic photographs.
 * @example ringsAround({ right: new Float32Array(9), down: new Float32Array(9), width: 3,
 *   height: 3, usual: 0, steep: 0 }, [1, 1], 4).length // 0
 */
export function ringsAround(
  steps: LightSteps,
  middle: readonly [number, number],
  count: number,
): RingSeen[] {
  const shorter = Math.min(steps.width, steps.height)
  const reach = Math.max(16, Math.round(0.75 * shorter))
  const rows = raysFrom(steps, middle, reach)
  const blurred = [6, 3, 1].map((half) => {
    return { half, soft: smoothed(smoothed(rows, reach, half), reach, half) }
  })
  const widest = (blurred[0] as Blurred).soft
  const heights = Array.from({ length: reach }, (_, r) =>
    meanAlong(widest, reach, r, [0, 0, 0, 0, 0]),
  )
  const peaks = heights
    .map((height, radius) => ({ height, radius }))
    .filter(({ height, radius }) => {
      const near = heights.slice(Math.max(0, radius - 3), radius + 4)
      return radius > 0.08 * shorter && height > 0 && height >= Math.max(...near)
    })
    .sort((a, b) => b.height - a.height)
    .slice(0, 2 * count)
  return peaks
    .flatMap(({ radius }) => {
      const wave = bend(blurred, reach, radius)
      const share = shareSeen(rows, reach, radius, wave)
      const ellipse = share < leastShare ? null : ellipseOf(middle, radius, wave)
      return ellipse === null ? [] : [{ ellipse, share }]
    })
    .sort((a, b) => b.share - a.share)
    .slice(0, count)
}
