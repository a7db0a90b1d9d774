import { describe, expect, it } from 'vitest'
import { edgeWave } from '../../../src/science/photo/edge-wave.ts'
import { seekEdge } from '../../../src/science/photo/seek-edge.ts'

/** Bands that end at a curve, then a grey chamfer, then darkness. */
function profilesOf(edge: readonly [number, number, number, number, number]) {
  const [angleCount, offsetCount, first, step] = [240, 91, -0.055, 0.001]
  const light = new Float64Array(angleCount * offsetCount)
  for (let j = 0; j < angleCount; j++) {
    const angle = (2 * Math.PI * j) / angleCount
    for (let i = 0; i < offsetCount; i++) {
      const off = first + i * step - edgeWave(edge, angle)
      const bands = 0.4 + 0.3 * Math.cos(2 * Math.PI * 5 * Math.cos(angle) * (1 + off))
      light[j * offsetCount + i] = off < 0 ? bands : off < 0.015 ? 0.4 : 0.1
    }
  }
  return { angleCount, offsetCount, first, step, light }
}

describe('seekEdge', () => {
  it.each([
    [0, 0, 0, 0, 0],
    [0.008, 0.006, -0.004, 0.003, 0],
    [-0.01, -0.008, 0.005, 0, -0.004],
  ] as const)('finds where the bands end, not where the chamfer ends: %d %d %d', (...edge) => {
    const found = seekEdge(profilesOf(edge), 0.02)
    // The steps are sought afterwards within 0.005; two thirds of a per cent apart is the chamfer.
    found.forEach((value, k) => {
      expect(Math.abs(value - (edge[k] ?? 0))).toBeLessThan(0.0025)
    })
  })
})
