import { describe, expect, it } from 'vitest'
import { lightSteps } from '../../../../src/science/photo/edges/light-steps.ts'
import { blank } from './painted-channel.ts'

const of = (light: (x: number, y: number) => number) => ({
  ...blank,
  light: blank.light.map((_, i) => light(i % 64, Math.floor(i / 64)) ** 2),
})

describe('lightSteps', () => {
  it('is nothing on an even grey and at the border', () => {
    const { right, down, usual } = lightSteps(blank)
    expect(Math.max(...right, ...down)).toBeCloseTo(0, 6) // Float32 light
    expect(usual).toBeCloseTo(0, 6)
  })

  it('gives the slope of the root of light, to the right and downwards', () => {
    const { right, down, usual } = lightSteps(of((x, y) => 0.1 + 0.006 * x + 0.002 * y))
    const at = 30 * 64 + 30
    expect(right[at]).toBeCloseTo(0.006, 5) // Float32 light
    expect(down[at]).toBeCloseTo(0.002, 5)
    expect(usual).toBeCloseTo(Math.hypot(0.006, 0.002), 5)
    expect(right[0]).toBe(0)
  })

  it('turns with the picture', () => {
    const across = lightSteps(of((x) => (x < 32 ? 0.2 : 0.8)))
    const upright = lightSteps(of((_, y) => (y < 32 ? 0.2 : 0.8)))
    expect(across.right[20 * 64 + 32]).toBeCloseTo(upright.down[32 * 64 + 20] as number, 6)
    expect(Math.abs(across.down[20 * 64 + 32] as number)).toBeLessThan(1e-6)
  })
})
