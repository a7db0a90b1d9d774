import type { EdgeProfiles } from './edge-profiles.ts'
import { type EdgeWave, edgeWave } from './edge-wave.ts'

/** Share of the light just inside that is above its mean around, times the fall of light. */
function fallsOfBands(profiles: EdgeProfiles): Float64Array {
  const { angleCount, offsetCount, step, light } = profiles
  const near = Math.max(2, Math.round(0.006 / step))
  const far = near + Math.max(3, Math.round(0.012 / step))
  const inside = new Float64Array(light.length)
  for (let row = 0; row < light.length; row += offsetCount) {
    for (let i = far; i < offsetCount; i++) {
      let sum = 0
      for (let k = i - far; k <= i - near; k++) sum += light[row + k] as number
      inside[row + i] = sum / (far - near + 1)
    }
  }
  const product = new Float64Array(light.length)
  for (let i = far; i < offsetCount - 3; i++) {
    let [mean, cosine, sine] = [0, 0, 0]
    for (let j = 0; j < angleCount; j++) {
      const value = inside[j * offsetCount + i] as number
      const angle = (2 * Math.PI * j) / angleCount
      mean += value / angleCount
      cosine += (2 * value * Math.cos(angle)) / angleCount
      sine += (2 * value * Math.sin(angle)) / angleCount
    }
    for (let j = 0; j < angleCount; j++) {
      const at = j * offsetCount + i
      const angle = (2 * Math.PI * j) / angleCount
      const slow = mean + cosine * Math.cos(angle) + sine * Math.sin(angle)
      const fall =
        2 * ((light[at - 1] as number) - (light[at + 1] as number)) +
        ((light[at - 2] as number) - (light[at + 2] as number)) +
        ((light[at - 3] as number) - (light[at + 3] as number))
      product[at] = fall * ((inside[at] as number) - slow)
    }
  }
  return product
}

/** Every row smoothed by a running mean, twice. */
function smoothed(rows: Float64Array, offsetCount: number, half: number): Float64Array {
  let from = rows
  for (let pass = 0; pass < 2; pass++) {
    const to = new Float64Array(rows.length)
    for (let row = 0; row < rows.length; row += offsetCount) {
      for (let i = 0; i < offsetCount; i++) {
        let sum = 0
        for (let k = Math.max(0, i - half); k <= Math.min(offsetCount - 1, i + half); k++) {
          sum += from[row + k] as number
        }
        to[row + i] = sum / (2 * half + 1)
      }
    }
    from = to
  }
  return from
}

function sumAlong(profiles: EdgeProfiles, rows: Float64Array, wave: EdgeWave): number {
  let sum = 0
  for (let j = 0; j < profiles.angleCount; j++) {
    const offset = edgeWave(wave, (2 * Math.PI * j) / profiles.angleCount)
    const place = (offset - profiles.first) / profiles.step
    const i = Math.floor(place)
    if (i < 0 || i + 1 >= profiles.offsetCount) continue
    const at = j * profiles.offsetCount + i
    const part = place - i
    sum += (rows[at] as number) * (1 - part) + (rows[at + 1] as number) * part
  }
  return sum
}

/**
 * Finds roughly where the bands end near an ellipse. At the edge of the land the light falls where
 * it was bright and rises where it was dark; at the far side of a chamfer it changes alike
 * everywhere. So the fall of light is multiplied by what the light just inside has above its mean,
 * and the closed curve is sought along which the sum of these products is largest.
 *
 * @param profiles light across the edge
 * @param reach how far the mean of the curve may lie from the ellipse, in units of the radius
 * @returns the curve, as a departure from the ellipse
 * Source: own method, tried on synthetic photographs.
 * @example seekEdge({ angleCount: 240, offsetCount: 40, first: -0.1, step: 0.005,
 *   light: new Float64Array(9600) }, 0.02).length // 5
 */
export function seekEdge(profiles: EdgeProfiles, reach: number): EdgeWave {
  const product = fallsOfBands(profiles)
  let best: EdgeWave = [0, 0, 0, 0, 0]
  for (const width of [0.008, 0.004, 0.002]) {
    const half = Math.max(1, Math.round(width / profiles.step / 2))
    const rows = smoothed(product, profiles.offsetCount, half)
    let height = Number.NEGATIVE_INFINITY
    if (width === 0.008) {
      for (let s0 = -reach; s0 <= reach; s0 += 0.002) {
        const sum = sumAlong(profiles, rows, [s0, 0, 0, 0, 0])
        if (sum > height) {
          height = sum
          best = [s0, 0, 0, 0, 0]
        }
      }
    } else height = sumAlong(profiles, rows, best)
    let stride = width / 2
    while (stride > width / 16) {
      let isBetter = false
      for (let k = 0; k < 5; k++) {
        for (const sign of [1, -1]) {
          const next = best.map((v, i) => (i === k ? v + sign * stride : v))
          const tried = next as unknown as EdgeWave
          const sum = sumAlong(profiles, rows, tried)
          if (sum > height) {
            height = sum
            best = tried
            isBetter = true
          }
        }
      }
      if (!isBetter) stride /= 2
    }
  }
  return best
}
