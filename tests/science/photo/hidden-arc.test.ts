import { describe, expect, it } from 'vitest'
import { hiddenArc } from '../../../src/science/photo/hidden-arc.ts'
import { landCells } from '../../../src/science/photo/land-cells.ts'
import type { RingSamples } from '../../../src/science/photo/sample-ring.ts'
import { bandLand } from './band-land.ts'

const range = { from: 0.75, to: 1 }

/** As a reading takes it: from the light that a tenth of the land exceeds, up and down. */
function swingOf(values: Float64Array): number {
  const sorted = values.slice().sort()
  const at = (share: number) => sorted[Math.floor(share * sorted.length)] as number
  const mean = values.reduce((a, b) => a + b, 0) / values.length
  return Math.max(1e-3, (at(0.9) - at(0.1)) / 1.902 / mean)
}

function land(bands: number, hide: (angleDeg: number) => number | null = () => null) {
  const gap = (x: number, y: number) => (bands / 2) * (0.8 * x + 0.6 * y) + 0.1
  const { samples } = bandLand({ radiusRatio: 0.75, wanted: 6500, gap })
  const values = samples.values.map((_, i) => {
    const [x, y] = [samples.xs[i] as number, samples.ys[i] as number]
    const angleDeg = ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360
    return hide(angleDeg) ?? 0.4 * (1 + 0.5 * Math.cos(2 * Math.PI * gap(x, y)))
  })
  const shown: RingSamples = { ...samples, values, isUsable: samples.isUsable.map(() => 1) }
  return hiddenArc(shown, landCells(shown, range), swingOf(values))
}

/** A sheet over so many degrees from 100 on, its light falling a little from end to end. */
const sheet = (degrees: number, light: number) => (angleDeg: number) =>
  angleDeg >= 100 && angleDeg < 100 + degrees ? light * (1 - 0.001 * (angleDeg - 100)) : null

describe('hiddenArc', () => {
  it.each([0.12, 0.4, 0.7])('measures a sheet of light %f to a sector on each side', (light) => {
    for (const degrees of [90, 140, 200]) {
      expect(Math.abs(land(8, sheet(degrees, light)) - degrees)).toBeLessThanOrEqual(20)
    }
  })

  it('finds none where nothing is hidden and two bands or more cross the face', () => {
    for (const bands of [2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8, 11, 15]) {
      // In the direction of the wedge the order hardly changes for 20 degrees on each side.
      expect(land(bands), `${bands} bands`).toBeLessThanOrEqual(40)
    }
  })

  it('is the longer of two hidden parts', () => {
    const two = (deg: number) => sheet(60, 0.2)(deg) ?? (deg > 200 && deg < 310 ? 0.2 : null)
    expect(Math.abs(land(10, two) - 110)).toBeLessThanOrEqual(20)
  })
})
