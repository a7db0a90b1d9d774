import { annularBasis } from '../surface/annular-basis.ts'
import { annularTerms } from '../surface/annular-terms.ts'
import { fourierPlane } from './fourier-plane.ts'
import type { PlaneImage } from './plane-image.ts'

/** A guess of the gap: order at the middle, then coefficients of the terms of level 1. */
export interface BandSeed {
  readonly gap: Float64Array
  /** How much light agrees with it; comparable among seeds of one picture. */
  readonly score: number
}

const level = 1
const termCount = 8

/** Form added to the plane: taper, two and three waves around. */
interface Hypothesis {
  readonly taper: number
  readonly two: number
  readonly twoAngle: number
  readonly three: number
  readonly threeAngle: number
}

function few(): Hypothesis[] {
  const none = { two: 0, twoAngle: 0, three: 0, threeAngle: 0 }
  return [0, 0.4].flatMap((taper) => [
    { ...none, taper },
    ...[0, 1, 2, 3, 4].map((k) => ({ ...none, taper, two: 0.5, twoAngle: (2 * Math.PI * k) / 5 })),
  ])
}

function many(): Hypothesis[] {
  const list: Hypothesis[] = []
  const around = (count: number) =>
    Array.from({ length: count }, (_, k) => (2 * Math.PI * k) / count)
  for (const taper of [0, 0.35, 0.7, 1.1, 1.6]) {
    list.push({ taper, two: 0, twoAngle: 0, three: 0, threeAngle: 0 })
    for (const two of [0.4, 0.8, 1.3, 1.9]) {
      for (const twoAngle of around(10)) {
        list.push({ taper, two, twoAngle, three: 0, threeAngle: 0 })
      }
    }
    for (const three of [0.4, 0.8, 1.3]) {
      for (const threeAngle of around(8)) {
        list.push({ taper, two: 0, twoAngle: 0, three, threeAngle })
        if (taper < 0.5) {
          for (const twoAngle of around(6)) {
            list.push({ taper, two: 0.6, twoAngle, three, threeAngle })
          }
        }
      }
    }
  }
  return list
}

/** Coefficients of a hypothesis in the order of the terms of level 1, a constant first. */
function coefficients(h: Hypothesis): Float64Array {
  const gap = new Float64Array(1 + termCount)
  annularTerms(level).forEach((term, k) => {
    if (term.angularOrder === 0 && term.radialOrder === 1) gap[1 + k] = h.taper
    if (term.angularOrder === 2) {
      gap[1 + k] = h.two * (term.isSine ? Math.sin(h.twoAngle) : Math.cos(h.twoAngle))
    }
    if (term.angularOrder === 3) {
      gap[1 + k] = h.three * (term.isSine ? Math.sin(h.threeAngle) : Math.cos(h.threeAngle))
    }
  })
  return gap
}

interface Peak extends BandSeed {
  readonly u: number
  readonly v: number
}

/** The strongest peaks of one transform, as gaps. */
function peaks(
  re: Float64Array,
  im: Float64Array,
  grid: { readonly size: number; readonly pitch: number },
  form: Float64Array,
): Peak[] {
  const { size } = grid
  const power = new Float64Array(size * size)
  let strongest = 0
  for (let i = 0; i < power.length; i++) {
    const here = (re[i] as number) ** 2 + (im[i] as number) ** 2
    power[i] = here
    if (here > strongest) strongest = here
  }
  const found: Peak[] = []
  const wrap = size - 1
  const at = (u: number, v: number) => power[(v & wrap) * size + (u & wrap)] as number
  const half = size / 2
  for (let v = -half + 1; v < half; v++) {
    for (let u = -half + 1; u < half; u++) {
      const here = at(u, v)
      // Much weaker peaks than the strongest of the same form never lead anywhere.
      if (here < 0.2 * strongest || u * u + v * v < 4) continue
      if (here <= at(u - 1, v) || here < at(u + 1, v)) continue
      if (here <= at(u, v - 1) || here < at(u, v + 1)) continue
      found.push({ u, v, score: Math.sqrt(here), gap: form })
    }
  }
  found.sort((a, b) => b.score - a.score)
  const width = size * grid.pitch
  return found.slice(0, 3).map((peak) => {
    const place = ((peak.v + size) % size) * size + ((peak.u + size) % size)
    // The first cell has its middle at -width / 2 + pitch / 2: the phase is brought to the centre.
    const shift = (peak.u + peak.v) * (0.5 - 0.5 / size)
    const gap = form.slice()
    gap[0] = Math.atan2(im[place] as number, re[place] as number) / (2 * Math.PI) + shift
    gap[1] = peak.u / width
    gap[2] = peak.v / width
    return { ...peak, gap }
  })
}

/**
 * Guesses the gap from the strongest frequencies of the light over the land, after taking away
 * small forms: taper, two waves and three waves around, each in several sizes and directions.
 *
 * transform of relative exp(-2 pi i form)
 *
 * @param image the land on a grid
 * @param options radiusRatio: inner over outer radius; isThorough: about forty times as many
 *   forms; wanted: how many guesses, the best ones that differ
 * @returns the guesses, the best one first
 * Source: carrier peaks after M. Takeda, H. Ina, S. Kobayashi, J. Opt. Soc. Am. 72, 156 (1982);
 *   the forms tried were chosen on synthetic photographs.
 * @example carrierSeeds({ size: 8, pitch: 0.35, values: new Float64Array(64) },
 *   { radiusRatio: 0.6, isThorough: false, wanted: 4 }).length // 0
 */
export function carrierSeeds(
  image: PlaneImage,
  options: {
    readonly radiusRatio: number
    readonly isThorough: boolean
    readonly wanted: number
  },
): BandSeed[] {
  const { size, pitch, values } = image
  const filled: number[] = []
  values.forEach((value, at) => {
    if (value !== 0) filled.push(at)
  })
  const place = (index: number) => (index + 0.5) * pitch - (size * pitch) / 2
  const basis = annularBasis({
    terms: annularTerms(level),
    radiusRatio: options.radiusRatio,
    xs: filled.map((at) => place(at % size)),
    ys: filled.map((at) => place(Math.floor(at / size))),
  })
  const all: Peak[] = []
  for (const hypothesis of options.isThorough ? many() : few()) {
    const form = coefficients(hypothesis)
    const re = new Float64Array(size * size)
    const im = new Float64Array(size * size)
    filled.forEach((at, i) => {
      let order = 0
      for (let k = 2; k < termCount; k++) {
        order += (form[1 + k] as number) * (basis[i * termCount + k] as number)
      }
      re[at] = (values[at] as number) * Math.cos(2 * Math.PI * order)
      im[at] = -(values[at] as number) * Math.sin(2 * Math.PI * order)
    })
    fourierPlane(re, im, size)
    all.push(...peaks(re, im, image, form))
  }
  all.sort((a, b) => b.score - a.score)
  const chosen: Peak[] = []
  for (const peak of all) {
    if (chosen.length >= options.wanted) break
    const isNew = chosen.every((other) => differ(other, peak))
    if (isNew) chosen.push(peak)
  }
  return chosen
}

/** Whether two guesses are far enough apart to lead to different fits, also with signs turned. */
function differ(a: Peak, b: Peak): boolean {
  const apart = (sign: number) => {
    let sum = 0
    for (let k = 1; k <= termCount; k++) {
      sum += ((a.gap[k] as number) - sign * (b.gap[k] as number)) ** 2
    }
    return Math.sqrt(sum)
  }
  return Math.min(apart(1), apart(-1)) > 0.35
}
