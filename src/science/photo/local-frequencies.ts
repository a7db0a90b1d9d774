import { fourierPlane } from './fourier-plane.ts'
import type { PlaneImage } from './plane-image.ts'

/** How fast the order of the bands changes at a place, bands per outer radius, up to its sign. */
export interface LocalFrequency {
  readonly x: number
  readonly y: number
  readonly u: number
  readonly v: number
  /** From 0 to 1: the share of the window's light that the peak explains. */
  readonly strength: number
  /** Standard deviation of the window, in units of the outer radius. */
  readonly window: number
}

const patch = 64

/** Where on a parabola through three logarithms the top lies, from -0.5 to 0.5. */
function top(before: number, here: number, after: number): number {
  const [a, b, c] = [Math.log(before + 1e-30), Math.log(here + 1e-30), Math.log(after + 1e-30)]
  const bend = a - 2 * b + c
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (a - c)) / bend)) : 0
}

/** Frequency of the strongest peak in a Gaussian window around a place. */
function frequencyAt(
  image: PlaneImage,
  place: { readonly x: number; readonly y: number },
  window: number,
): LocalFrequency | null {
  const { size, pitch, values } = image
  const re = new Float64Array(patch * patch)
  const im = new Float64Array(patch * patch)
  const left = Math.round((place.x + (size * pitch) / 2) / pitch) - patch / 2
  const bottom = Math.round((place.y + (size * pitch) / 2) / pitch) - patch / 2
  const weights = new Float64Array(patch * patch)
  let [sum, weightSum] = [0, 0]
  for (let j = 0; j < patch; j++) {
    for (let i = 0; i < patch; i++) {
      const [column, row] = [left + i, bottom + j]
      if (column < 0 || row < 0 || column >= size || row >= size) continue
      const value = values[row * size + column] as number
      if (value === 0) continue
      const dx = (column + 0.5) * pitch - (size * pitch) / 2 - place.x
      const dy = (row + 0.5) * pitch - (size * pitch) / 2 - place.y
      const weight = Math.exp(-(dx * dx + dy * dy) / (2 * window * window))
      weights[j * patch + i] = weight
      re[j * patch + i] = value
      sum += weight * value
      weightSum += weight
    }
  }
  if (weightSum < 6) return null
  let energy = 0
  for (let k = 0; k < re.length; k++) {
    const weight = weights[k] as number
    re[k] = weight * ((re[k] as number) - sum / weightSum)
    if (weight > 0) energy += (re[k] as number) ** 2 / weight
  }
  fourierPlane(re, im, patch)
  const power = (u: number, v: number) => {
    const at = ((v + patch) % patch) * patch + ((u + patch) % patch)
    return (re[at] as number) ** 2 + (im[at] as number) ** 2
  }
  let [bu, bv, best] = [0, 0, 0]
  for (let v = 0; v < patch / 2 - 1; v++) {
    for (let u = v === 0 ? 1 : -patch / 2 + 1; u < patch / 2 - 1; u++) {
      const here = power(u, v)
      if (here > best && u * u + v * v >= 2) [bu, bv, best] = [u, v, here]
    }
  }
  if (best === 0) return null
  const width = patch * pitch
  return {
    ...place,
    u: (bu + top(power(bu - 1, bv), best, power(bu + 1, bv))) / width,
    v: (bv + top(power(bu, bv - 1), best, power(bu, bv + 1))) / width,
    strength: Math.min(1, (2 * best) / (energy * weightSum + 1e-12)),
    window,
  }
}

/**
 * Reads local frequencies of the bands around the land, in Gaussian windows.
 *
 * @param image the land on a grid
 * @param options radiusRatio: inner over outer radius; window: standard deviation of the window,
 *   in units of the outer radius
 * @returns one frequency a window: on one ring for a narrow land, on up to three for a broad one
 * Source: windowed Fourier transform, from memory.
 * @example localFrequencies({ size: 8, pitch: 0.35, values: new Float64Array(64) },
 *   { radiusRatio: 0.6, window: 0.2 }).length // 0
 */
export function localFrequencies(
  image: PlaneImage,
  options: { readonly radiusRatio: number; readonly window: number },
): LocalFrequency[] {
  const { radiusRatio, window } = options
  const width = 1 - radiusRatio
  const ringCount = width < 0.14 ? 1 : width < 0.26 ? 2 : 3
  const found: LocalFrequency[] = []
  for (let ring = 0; ring < ringCount; ring++) {
    const r = radiusRatio + (width * (ring + 0.5)) / ringCount
    const count = Math.ceil((2 * Math.PI * r) / window)
    for (let k = 0; k < count; k++) {
      const angle = (2 * Math.PI * (k + 0.5 * ring)) / count
      const place = { x: r * Math.cos(angle), y: r * Math.sin(angle) }
      const one = frequencyAt(image, place, window)
      if (one !== null) found.push(one)
    }
  }
  return found
}
