import { describe, expect, it } from 'vitest'
import { betweenEdges } from '../../../../src/science/photo/edges/between-edges.ts'

const outer = { cx: 50, cy: 40, rx: 20, ry: 20, rotationDeg: 0 }
const inner = { cx: 52, cy: 40, rx: 10, ry: 10, rotationDeg: 0 }

describe('betweenEdges', () => {
  it('lies on the edges at 0 and 1, by their circles', () => {
    for (const [share, edge] of [
      [0, inner],
      [1, outer],
    ] as const) {
      for (const [x, y] of betweenEdges({ outer, inner }, share, 12)) {
        expect(Math.hypot(x - edge.cx, y - edge.cy)).toBeCloseTo(edge.rx, 9) // rounding alone
      }
    }
  })

  it('runs counter-clockwise from the right, y downwards', () => {
    const [right, top] = betweenEdges({ outer, inner }, 1, 4)
    expect(right?.[0]).toBeCloseTo(70, 9)
    expect(top?.[1]).toBeCloseTo(20, 9)
  })

  it('goes on beyond both edges, half-way between centres that differ', () => {
    expect(betweenEdges({ outer, inner }, 0.5, 4)[0]?.[0]).toBeCloseTo(51 + 15, 9)
    expect(betweenEdges({ outer, inner }, 1.5, 4)[0]?.[0]).toBeCloseTo(49 + 25, 9)
    expect(betweenEdges({ outer, inner }, -0.5, 4)[0]?.[0]).toBeCloseTo(53 + 5, 9)
  })
})
