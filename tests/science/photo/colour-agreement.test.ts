import { describe, expect, it } from 'vitest'
import { colourAgreement } from '../../../src/science/photo/colour-agreement.ts'
import type { LinearChannels } from '../../../src/science/photo/linear-channels.ts'

const size = 240
const face = {
  outer: { cx: 120, cy: 120, rx: 100, ry: 100, rotationDeg: 0 },
  from: 0.7,
  to: 0.98,
}

/** Bands of so many orders each, with their swing, mean light and how much noise lies over them. */
function channel(orders: number, light = 0.4, swing = 0.5, noise = 0): Float32Array {
  return Float32Array.from({ length: size * size }, (_, i) => {
    const x = ((i % size) - 120) / 100
    const grain = noise * Math.sin(12.9898 * i * i)
    return light * (1 + swing * Math.cos(2 * Math.PI * (orders * x + 0.2)) + grain)
  })
}

const agreement = (...channels: LinearChannels['channels']) =>
  colourAgreement({ width: size, height: size, channels }, 0, face)

describe('colourAgreement', () => {
  it('is 1 for the same bands in other brightness and contrast', () => {
    const swings = agreement(channel(4), channel(4, 0.2, 0.3), channel(4, 0.3))
    // The background takes a little of the bands away, alike in all.
    expect(swings).toBeGreaterThan(0.999)
  })

  it('is low for bands of other widths, as a white lamp makes them', () => {
    // Orders as the wavelengths of red, green and blue: 610, 540 and 465 nm.
    expect(agreement(channel(4), channel((4 * 610) / 540), channel(4))).toBeLessThan(0.5)
    expect(agreement(channel(4), channel(4), channel((4 * 610) / 465))).toBeLessThan(0.5)
  })

  it('does not ask a dark channel, nor one in which the bands are washed out', () => {
    expect(agreement(channel(4), channel(4), channel(7, 0.05))).toBeGreaterThan(0.999)
    expect(agreement(channel(4), channel(4), channel(7, 0.4, 0.1))).toBeGreaterThan(0.999)
  })

  it('stays high under noise that is half as strong as the bands', () => {
    // Cells of some pixels average the noise; without that it would be 0.7.
    expect(agreement(channel(4), channel(4, 0.4, 0.5, 0.25), channel(4))).toBeGreaterThan(0.9)
  })
})
