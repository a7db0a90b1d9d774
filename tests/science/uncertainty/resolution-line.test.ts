import { describe, expect, it } from 'vitest'
import { resolutionLine } from '../../../src/science/uncertainty/resolution-line.ts'

describe('resolutionLine', () => {
  it('gives 0.29 of the step of a display, JCGM 100:2008, F.2.2.1', () => {
    const line = resolutionLine({ source: 'resolution', step: 1, sensitivity: 1 })
    expect(line.contribution).toBeCloseTo(0.29, 2) // printed digits
    expect(line.contribution).toBeCloseTo(1 / Math.sqrt(12), 15) // the formula there
    expect(line.distribution).toBe('rectangular')
  })

  it('agrees with what rounding does to readings spread over many steps', () => {
    let squares = 0
    const count = 100_000
    // Multiples of the golden section fill a step evenly.
    for (let i = 0; i < count; i++) {
      const true_ = i * 0.6180339887498949
      squares += (Math.round(true_ / 5) * 5 - true_) ** 2
    }
    const { value } = resolutionLine({ source: 'resolution', step: 5, sensitivity: 1 })
    expect(value).toBeCloseTo(Math.sqrt(squares / count), 3) // evenness of the filling
  })

  it('refuses a step below nought', () => {
    expect(() => resolutionLine({ source: 'x', step: -1, sensitivity: 1 })).toThrow(
      /^resolutionLine requires step /,
    )
  })
})
