import { expect, it } from 'vitest'
import { prepareFace } from '../../../src/science/photo/prepare-face.ts'
import { readLand } from '../../../src/science/photo/read-land.ts'
import { paintRing } from './paint-ring.ts'

const outer = { cx: 200, cy: 200, rx: 160, ry: 160, rotationDeg: 0 }
const inner = { ...outer, rx: 112, ry: 112 }

// A reading takes a second or two, longer beside other work.
it('readLand explains a painted land and tells how far it is', { timeout: 60_000 }, () => {
  const gap = (x: number, y: number) => 4 * x + 2 * y + 0.3 * (x * x - y * y)
  const picture = paintRing({ width: 400, height: 400, outer, radiusRatio: 0.7, gap })
  const face = prepareFace(picture, { outer, inner })
  if (face.kind !== 'face') throw new Error(face.reason)
  const told: number[] = []
  const land = readLand(face, (share) => told.push(share))
  expect(land?.quality.explainedShare).toBe(1)
  // Painted with 9 places a pixel and bytes: a few thousandths of the light.
  expect(land?.quality.spread).toBeLessThan(0.02)
  // Three pixels of 160 are more than the usual margin of 0.014.
  expect(land?.seenTo).toBeCloseTo(1 - 0.014, 10)
  expect(told).toEqual([0.2])
})

it('readLand searches no longer where there are no bands', { timeout: 60_000 }, () => {
  const picture = paintRing({ width: 400, height: 400, outer, radiusRatio: 0.7, gap: () => 0.25 })
  const face = prepareFace(picture, { outer, inner })
  if (face.kind !== 'face') throw new Error(face.reason)
  const told: number[] = []
  const land = readLand(face, (share) => told.push(share))
  expect(land?.quality.swing).toBeLessThan(0.03)
  expect(told).toEqual([0.2])
})
