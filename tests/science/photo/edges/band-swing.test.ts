import { describe, expect, it } from 'vitest'
import { bandSwing } from '../../../../src/science/photo/edges/band-swing.ts'
import { betweenEdges } from '../../../../src/science/photo/edges/between-edges.ts'
import { blank, channel, inner, outer } from './painted-channel.ts'

const circle = (r: number, count = 360) =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count
    return [32 + r * Math.cos(angle), 32 - r * Math.sin(angle)] as const
  })

describe('bandSwing', () => {
  it('is nothing on an even grey', () => {
    expect(bandSwing(blank, circle(20))).toBeCloseTo(0, 6) // Float32 light
  })

  it('takes away a wave once around, as uneven light makes it', () => {
    const slope = { ...blank, light: blank.light.map((_, i) => (0.4 + 0.004 * (i % 64)) ** 2) }
    const level = Math.hypot(20 * 0.004, 0)
    const left = bandSwing(slope, circle(20))
    expect(left).not.toBeNull()
    // The root of light grows evenly across: once around, a pure wave of one crest.
    expect(left as number).toBeLessThan(0.02 * level)
  })

  it('is large where bands cross and small beyond them', () => {
    const at = (share: number) =>
      bandSwing(channel, betweenEdges({ outer, inner }, share, 360)) ?? 0
    expect(at(0.5)).toBeGreaterThan(0.2)
    expect(at(1.2)).toBeLessThan(0.05 * at(0.5))
    expect(at(-0.3)).toBeLessThan(0.05 * at(0.5))
  })

  it('answers nothing of a curve that leaves the picture', () => {
    expect(bandSwing(blank, circle(40))).toBeNull()
  })
})
