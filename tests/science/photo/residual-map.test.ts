import { expect, it } from 'vitest'
import { residualMap } from '../../../src/science/photo/residual-map.ts'

it('residualMap gives means over the swing, and null where nothing was seen', () => {
  const angle = (2 * Math.PI * 24.5) / 96
  const place = (r: number) => ({ x: r * Math.cos(angle), y: r * Math.sin(angle) })
  const points = [place(0.61), place(0.62), place(0.99)]
  const map = residualMap(
    { xs: points.map((p) => p.x), ys: points.map((p) => p.y), residuals: [0.1, 0.2, -0.4] },
    { from: 0.6, to: 1, swing: 0.5 },
  )
  expect(map.shares).toHaveLength(8 * 96)
  expect(map.shares[24]).toBe(0.3)
  expect(map.shares[7 * 96 + 24]).toBe(-0.8)
  expect(map.shares.filter((share) => share !== null)).toHaveLength(2)
})
