import { expect, it } from 'vitest'
import { readPhoto } from '../../../src/science/photo/read-photo.ts'
import { readScaledPhoto } from '../../../src/science/photo/read-scaled-photo.ts'
import { scaleEllipse } from '../../../src/science/photo/scale-ellipse.ts'
import { paintRing } from './paint-ring.ts'

const outer = { cx: 200, cy: 200, rx: 165, ry: 165, rotationDeg: 0 }
const inner = { ...outer, rx: 115.5, ry: 115.5 }
const gap = (x: number, y: number) => 4 * x + y + 0.3 * (x * x - y * y)
const picture = paintRing({ width: 400, height: 400, outer, radiusRatio: 0.7, gap })

// Each reading takes a second or two, longer beside other work.
it('readScaledPhoto reads the same with all places in another size', { timeout: 60_000 }, () => {
  const plain = readPhoto(picture, { outer, inner })
  const edges = { outer: scaleEllipse(outer, 4), inner: scaleEllipse(inner, 4) }
  const scaled = readScaledPhoto(picture, 0.25, edges)
  if (plain.kind !== 'read' || scaled.kind !== 'read') throw new Error('it was refused')
  expect(scaled.surface).toEqual(plain.surface) // quarters are exact in binary
  expect(scaled.outer).toEqual(scaleEllipse(plain.outer, 4))
  const [x, y] = plain.bandLines[0]?.points[0] ?? [0, 0]
  expect(scaled.bandLines[0]?.points[0]).toEqual([(x + 0.5) * 4 - 0.5, (y + 0.5) * 4 - 0.5])
  expect(scaled.bandLines).toHaveLength(plain.bandLines.length)
})
