import type { Ellipse } from '../ellipse.ts'
import { ringMap } from '../ring-map.ts'

/**
 * Gives places along a curve between two edges, or beside them.
 *
 * place = inner + share (outer - inner), direction by direction
 *
 * @param edges in pixels
 * @param share 0 on the inner edge, 1 on the outer one, below 0 or above 1 beyond them
 * @param count how many directions, counter-clockwise from the right
 * @returns pixels
 * Source: geometry.
 * @example betweenEdges({ outer: { cx: 9, cy: 9, rx: 4, ry: 4, rotationDeg: 0 },
 *   inner: { cx: 9, cy: 9, rx: 2, ry: 2, rotationDeg: 0 } }, 0.5, 4)[0][0] // 12
 */
export function betweenEdges(
  edges: { readonly outer: Ellipse; readonly inner: Ellipse },
  share: number,
  count: number,
): (readonly [number, number])[] {
  const outer = ringMap(edges.outer)
  const inner = ringMap(edges.inner)
  const mixed = (key: 'cx' | 'cy' | 'xx' | 'xy' | 'yy') =>
    inner[key] + share * (outer[key] - inner[key])
  const [cx, cy, xx, xy, yy] = [mixed('cx'), mixed('cy'), mixed('xx'), mixed('xy'), mixed('yy')]
  return Array.from({ length: count }, (_, i) => {
    const c = Math.cos((2 * Math.PI * i) / count)
    const s = Math.sin((2 * Math.PI * i) / count)
    return [cx + xx * c + xy * s, cy - (xy * c + yy * s)] as const
  })
}
