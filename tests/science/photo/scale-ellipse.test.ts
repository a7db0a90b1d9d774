import { expect, it } from 'vitest'
import { scaleEllipse } from '../../../src/science/photo/scale-ellipse.ts'

it('scaleEllipse keeps the borders of the picture: the left border lies at -1/2', () => {
  const touching = { cx: 9.5, cy: 4.5, rx: 10, ry: 5, rotationDeg: 12 }
  const half = scaleEllipse(touching, 0.5)
  expect(half.cx - half.rx).toBe(-0.5)
  expect(half.cy - half.ry).toBe(-0.5)
  expect(half.rotationDeg).toBe(12)
})

it('scaleEllipse is undone by the other factor', () => {
  const ellipse = { cx: 12.25, cy: 7.75, rx: 6, ry: 5, rotationDeg: 0 }
  expect(scaleEllipse(scaleEllipse(ellipse, 0.25), 4)).toEqual(ellipse) // exact in binary
})
