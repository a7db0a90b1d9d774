import { areaWeights } from '../../../src/science/surface/area-weights.ts'
import { minimumZone } from '../../../src/science/surface/minimum-zone.ts'
import { withoutPlane } from '../../../src/science/surface/without-plane.ts'

/** What is true of a land, in bands. */
export interface FormTruth {
  readonly pvLS: number
  readonly pvMZ: number
  readonly rmsLS: number
  /** Inner minus outer edge by the straight line through the ring means: + is convex. */
  readonly coningIDminusOD: number
  readonly lobes: Readonly<Record<string, { readonly amp: number; readonly phaseDeg: number }>>
}

const ringCount = 41
const angleCount = 360

/** Amplitude and direction of the first crest of n waves around, of the radially averaged land. */
function lobe(means: readonly number[], n: number): { amp: number; phaseDeg: number } {
  let [c, s] = [0, 0]
  means.forEach((value, j) => {
    c += (2 * value * Math.cos((2 * Math.PI * n * j) / angleCount)) / angleCount
    s += (2 * value * Math.sin((2 * Math.PI * n * j) / angleCount)) / angleCount
  })
  return { amp: Math.hypot(c, s), phaseDeg: (Math.atan2(s, c) * 180) / Math.PI / n }
}

function taper(radii: readonly number[], heights: readonly (readonly number[])[]): number {
  const weights = areaWeights(radii)
  const means = heights.map((row) => row.reduce((a, b) => a + b, 0) / row.length)
  const middle = radii.reduce((sum, r, i) => sum + (weights[i] as number) * r, 0)
  let [top, square] = [0, 0]
  radii.forEach((r, i) => {
    top += (weights[i] as number) * (r - middle) * (means[i] as number)
    square += (weights[i] as number) * (r - middle) ** 2
  })
  return (-top / square) * ((radii.at(-1) as number) - (radii[0] as number))
}

/** Figures of a land from its height, on 41 circles of 360 places, both edges included. */
export function formTruth(
  radiusRatio: number,
  height: (x: number, y: number) => number,
): FormTruth {
  const radii = Array.from(
    { length: ringCount },
    (_, i) => radiusRatio + ((1 - radiusRatio) * i) / (ringCount - 1),
  )
  const anglesDeg = Array.from({ length: angleCount }, (_, j) => (360 * j) / angleCount)
  const heights = radii.map((r) =>
    anglesDeg.map((deg) => {
      const angle = (deg * Math.PI) / 180
      return height(r * Math.cos(angle), r * Math.sin(angle))
    }),
  )
  const left = withoutPlane({ radii, anglesDeg, heights }).map.heights
  const weights = areaWeights(radii)
  let square = 0
  left.forEach((row, i) => {
    for (const value of row) square += ((weights[i] as number) * value * value) / angleCount
  })
  const means = anglesDeg.map((_, j) =>
    left.reduce((sum, row, i) => sum + (weights[i] as number) * (row[j] as number), 0),
  )
  // Every third ray: the simplex needs no more, and a form is smooth.
  const points = left.flatMap((row, i) =>
    row.flatMap((z, j) => {
      if (j % 3 !== 0) return []
      const angle = ((anglesDeg[j] as number) * Math.PI) / 180
      const r = radii[i] as number
      return [{ x: r * Math.cos(angle), y: r * Math.sin(angle), z }]
    }),
  )
  const all = left.flat()
  const pvLS =
    all.reduce((a, b) => Math.max(a, b), -9e9) - all.reduce((a, b) => Math.min(a, b), 9e9)
  return {
    pvLS,
    pvMZ: Math.min(pvLS, minimumZone(points).height),
    rmsLS: Math.sqrt(square),
    coningIDminusOD: taper(radii, left),
    lobes: Object.fromEntries([2, 3, 4, 5, 6].map((n) => [n, lobe(means, n)])),
  }
}
