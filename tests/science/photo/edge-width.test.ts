import { describe, expect, it } from 'vitest'
import { edgeWidth } from '../../../src/science/photo/edge-width.ts'

const size = 500
const outer = { cx: 250.3, cy: 248.6, rx: 180, ry: 175, rotationDeg: 30 }

/** The integral of a normal curve by a logistic one, which errs by a hundredth at most. */
const rise = (z: number) => 1 / (1 + Math.exp(-1.702 * z))

/** A bright disc whose edge is blurred by so much of its radius, with bands on it. */
function disc(blur: number, bands = 0) {
  const light = Float32Array.from({ length: size * size }, (_, i) => {
    const [dx, dy] = [(i % size) - outer.cx, outer.cy - Math.floor(i / size)]
    const turn = (outer.rotationDeg * Math.PI) / 180
    const along = (dx * Math.cos(turn) + dy * Math.sin(turn)) / outer.rx
    const upward = (-dx * Math.sin(turn) + dy * Math.cos(turn)) / outer.ry
    const land = 0.5 + 0.05 * Math.cos(2 * Math.PI * bands * along)
    return 0.1 + (land - 0.1) * rise((1 - Math.hypot(along, upward)) / blur)
  })
  return { light, width: size, height: size }
}

describe('edgeWidth', () => {
  it.each([0.03, 0.05, 0.08])('is 2.5 standard deviations for a blur of %f', (blur) => {
    const ratio = edgeWidth(disc(blur), outer) / (Math.sqrt(2 * Math.PI) * blur)
    // The logistic curve is 6 % steeper in its middle, steps of 0.02 flatten the narrow ones.
    expect(ratio).toBeGreaterThan(0.85)
    expect(ratio).toBeLessThan(1.15)
  })

  it('stays small at a sharp edge, with bands on the face or without', () => {
    expect(edgeWidth(disc(0.004), outer)).toBeLessThan(0.03)
    expect(edgeWidth(disc(0.004, 5), outer)).toBeLessThan(0.045)
  })

  it('is 0 where there is no light, or no picture below the edge', () => {
    expect(edgeWidth({ ...disc(0.01), light: new Float32Array(size * size) }, outer)).toBe(0)
    expect(edgeWidth(disc(0.01), { ...outer, cx: 5000 })).toBe(0)
  })
})
