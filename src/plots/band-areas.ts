import type { PathShape, Tone } from './drawing.ts'
import type { RingArea } from './ring-area.ts'

/**
 * Half widths of the drawn bands, in bands of gap: where twoBeamIntensity falls below 0.62, the
 * flank, and below 0.26, the middle.
 */
export const bandHalfWidths: readonly { readonly tone: Tone; readonly bands: number }[] = [
  { tone: 'half', bands: 0.29 },
  { tone: 'dark', bands: 0.17 },
]

/**
 * The dark bands over a ring: one path a band and tone, its `part` named by the order of the band.
 *
 * @param ring the land
 * @param orderAt order of the band seen at x across and y upwards, in outer radii; whole is dark
 * @returns flanks first, then middles
 * @example bandAreas(ringArea({ sizePx: 100, innerRatio: 0.5 }), (_, y) => 3 * y).length // 14
 */
export function bandAreas(
  ring: RingArea,
  orderAt: (x: number, y: number) => number,
): readonly PathShape[] {
  const orders = ring.sampled(orderAt)
  const lowest = Math.floor(Math.min(...orders))
  const highest = Math.ceil(Math.max(...orders))
  return bandHalfWidths.flatMap(({ tone, bands: half }) => {
    const shapes: PathShape[] = []
    for (let order = lowest; order <= highest; order += 1) {
      const d = ring.pathOf(orders, (value) => half - Math.abs(value - order))
      if (d !== '') shapes.push({ kind: 'path', d, fill: tone, part: `band ${order}` })
    }
    return shapes
  })
}
