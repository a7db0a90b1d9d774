import { annularTerms } from '../surface/annular-terms.ts'
import { edgeSafeBasis } from '../surface/edge-safe-basis.ts'
import { contourLines } from './contour-lines.ts'
import type { Ellipse } from './ellipse.ts'
import { ringMap } from './ring-map.ts'

/** The middle of a dark band, to be drawn over the picture: pixels, and its order. */
export interface BandLine {
  readonly order: number
  readonly points: readonly (readonly [number, number])[]
}

const ringCount = 13
const angleCount = 240

/**
 * Gives the middles of the dark bands of a fit as lines in the picture.
 *
 * dark where the gap is a whole number of bands and a half, counted from the fit's own zero
 *
 * @param gap order at the middle, then coefficients of the terms of level 4, in bands
 * @param face outer: the outer edge in the picture; radiusRatio; seenFrom, seenTo: the radii drawn
 * @returns lines with whole orders from 0 up; lines that look cut at 0 degrees are joined
 * Source: as contourLines.
 * @example bandLines(new Float64Array([0.5, 0.1, ...Array(45).fill(0)]),
 *   { outer: { cx: 5, cy: 5, rx: 4, ry: 4, rotationDeg: 0 }, radiusRatio: 0.6, seenFrom: 0.6,
 *   seenTo: 1 }).length // 2
 */
export function bandLines(
  gap: Float64Array,
  face: {
    readonly outer: Ellipse
    readonly radiusRatio: number
    readonly seenFrom: number
    readonly seenTo: number
  },
): BandLine[] {
  const { outer, radiusRatio, seenFrom, seenTo } = face
  const terms = annularTerms(4)
  const radii = Array.from({ length: ringCount }, (_, i) => {
    return seenFrom + ((seenTo - seenFrom) * i) / (ringCount - 1)
  })
  const basis = edgeSafeBasis({ terms, radiusRatio, seenFrom, seenTo, radii, angleCount })
  const values = Float64Array.from({ length: ringCount * angleCount }, (_, point) => {
    let order = gap[0] as number
    for (let k = 0; k < terms.length; k++) {
      order += (gap[1 + k] ?? 0) * (basis[point * terms.length + k] as number)
    }
    return order
  })
  const lowest = Math.ceil(Math.min(...values) - 0.5)
  const highest = Math.floor(Math.max(...values) - 0.5)
  // A finite fit has few bands; the bound only keeps a wild one from filling the memory.
  const count = Math.max(0, Math.min(200, highest - lowest + 1))
  const levels = Array.from({ length: count }, (_, k) => lowest + k + 0.5)
  const map = ringMap(outer)
  const round = (pixel: number) => Math.round(pixel * 100) / 100
  return contourLines({ rowCount: ringCount, columnCount: angleCount, values }, levels)
    .filter((line) => line.points.length > 2)
    .map((line) => ({
      order: Math.round(line.value - 0.5) - lowest,
      points: line.points.map(([row, column]) => {
        const r = seenFrom + ((seenTo - seenFrom) * row) / (ringCount - 1)
        const angle = (2 * Math.PI * column) / angleCount
        const x = r * Math.cos(angle)
        const y = r * Math.sin(angle)
        return [
          round(map.cx + map.xx * x + map.xy * y),
          round(map.cy - (map.xy * x + map.yy * y)),
        ] as const
      }),
    }))
}
