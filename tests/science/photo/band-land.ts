import type { RingSamples } from '../../../src/science/photo/sample-ring.ts'
import { seededNormal } from '../seeded-random.ts'

/** Samples of a land on a square grid, with the relative light of a gap and some noise. */
export function bandLand(input: {
  readonly radiusRatio: number
  readonly wanted: number
  readonly gap: (x: number, y: number) => number
  readonly swing?: number
  readonly noise?: number
}): { readonly samples: RingSamples; readonly relative: Float64Array } {
  const { radiusRatio, wanted, gap, swing = 0.5, noise = 0.01 } = input
  const pitch = Math.sqrt((Math.PI * (1 - radiusRatio ** 2)) / wanted)
  const normal = seededNormal(7)
  const points: [number, number][] = []
  for (let y = 1 - pitch / 2; y > -1; y -= pitch) {
    for (let x = -1 + pitch / 2; x < 1; x += pitch) {
      const r = Math.hypot(x, y)
      if (r >= radiusRatio && r <= 1) points.push([x, y])
    }
  }
  const relative = Float64Array.from(points, ([x, y]) => {
    return swing * Math.cos(2 * Math.PI * gap(x, y)) + noise * normal()
  })
  return {
    samples: {
      xs: Float64Array.from(points, ([x]) => x),
      ys: Float64Array.from(points, ([, y]) => y),
      values: relative.map((value) => 0.4 * (1 + value)),
      isUsable: new Uint8Array(points.length).fill(1),
      pitch,
    },
    relative,
  }
}
