import { expect, it } from 'vitest'
import { annularBasis } from '../../../src/science/surface/annular-basis.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { edgeSafeBasis } from '../../../src/science/surface/edge-safe-basis.ts'

const terms = annularTerms(4)
const input = { terms, radiusRatio: 0.6, seenFrom: 0.62, seenTo: 0.97, angleCount: 7 }

it('edgeSafeBasis is the basis itself where the land was seen', () => {
  const found = edgeSafeBasis({ ...input, radii: [0.62, 0.8, 0.97] })
  const angles = Array.from({ length: 7 }, (_, j) => (2 * Math.PI * j) / 7)
  const expected = [0.62, 0.8, 0.97].flatMap((r) => [
    ...annularBasis({
      terms,
      radiusRatio: 0.6,
      xs: angles.map((angle) => r * Math.cos(angle)),
      ys: angles.map((angle) => r * Math.sin(angle)),
    }),
  ])
  expect([...found]).toEqual(expected)
})

it('edgeSafeBasis goes on straight beyond, by the slope of Legendre polynomials at their end', () => {
  // P_p has the value 1 and the slope p (p + 1) / 2 at t = 1; t = r / 0.2 - 4 here.
  const found = edgeSafeBasis({ ...input, seenTo: 1, radii: [1.02], angleCount: 1 })
  terms.forEach(({ angularOrder: m, radialOrder: p, isSine }, k) => {
    if (m === 1 && p === 0) return
    const expected = isSine ? 0 : 1 + 0.1 * ((p * (p + 1)) / 2)
    expect(found[k]).toBeCloseTo(expected, 6) // step 1e-5 squared times a third derivative below 1e4
  })
})

it('edgeSafeBasis keeps straight radii straight', () => {
  const found = edgeSafeBasis({ ...input, radii: [0.5, 0.6, 1, 1.1], angleCount: 1 })
  const x = [0, 1, 2, 3].map((i) => found[i * terms.length] ?? 0)
  ;[0.5, 0.6, 1, 1.1].forEach((r, i) => {
    expect(x[i]).toBeCloseTo(r, 9) // rounding of a difference over 2e-5
  })
})
