import { describe, expect, it } from 'vitest'
import { lightAt } from '../../../src/science/photo/light-at.ts'

const plane = {
  light: Float32Array.from({ length: 20 }, (_, i) => 2 * (i % 5) + 10 * Math.floor(i / 5)),
  width: 5,
  height: 4,
}

describe('lightAt', () => {
  it('gives a plane exactly, between pixels too', () => {
    for (const [x, y] of [
      [0, 0],
      [1.25, 2.5],
      [3.75, 0.5],
      [4, 3],
    ] as const) {
      expect(lightAt(plane, x, y)).toBe(2 * x + 10 * y) // quarters are exact in binary
    }
  })

  it('takes the light of the border off the picture', () => {
    expect(lightAt(plane, -3, -1)).toBe(0)
    expect(lightAt(plane, 9, 1)).toBe(18)
    expect(lightAt(plane, 2, 7.5)).toBe(34)
  })
})
