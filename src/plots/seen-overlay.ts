import type { Ellipse } from '../science/photo/ellipse.ts'
import { doubledLine } from './doubled-line.ts'
import type { Drawing, Shape } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

/** What is drawn over a photograph, in its pixels. */
export interface SeenOverlay {
  readonly widthPx: number
  readonly heightPx: number
  readonly outer: Ellipse
  readonly inner: Ellipse
  readonly bandLines: readonly {
    readonly order: number
    readonly points: readonly (readonly [number, number])[]
  }[]
  /** Places that were tapped; absent where the program found the bands. */
  readonly marks?: readonly { readonly x: number; readonly y: number; readonly order: number }[]
  readonly doubtfulDeg: readonly number[]
  /** Two arrows across the bands, along this direction and against it; null: none. */
  readonly arrowsDeg: number | null
  readonly arrowTexts: readonly [string, string]
}

/** Half the width of a label. */
function halfPx(text: string, sizePx: number): number {
  return sizePx * 0.36 * (text.length + 0.8)
}

function label(at: PointPx, text: string, sizePx: number): Shape[] {
  const half = halfPx(text, sizePx)
  const box = [
    { x: at.x - half, y: at.y - 0.62 * sizePx },
    { x: at.x + half, y: at.y - 0.62 * sizePx },
    { x: at.x + half, y: at.y + 0.62 * sizePx },
    { x: at.x - half, y: at.y + 0.62 * sizePx },
  ]
  const y = roundPx(at.y + 0.35 * sizePx)
  return [
    { kind: 'path', d: outlinePath(box, true), fill: 'paper' },
    {
      kind: 'text',
      x: roundPx(at.x),
      y,
      text,
      sizePx,
      anchor: 'middle',
      tone: 'ink',
      isStrong: true,
    },
  ]
}

/** A place at an angle, counter-clockwise from the right as the picture shows it. */
function placeAt({ cx, cy, rx, ry, rotationDeg }: Ellipse, deg: number, by = 1): PointPx {
  const turn = (rotationDeg * Math.PI) / 180
  const angle = (deg * Math.PI) / 180 - turn
  const [x, y] = [by * rx * Math.cos(angle), by * ry * Math.sin(angle)]
  return {
    x: cx + x * Math.cos(turn) - y * Math.sin(turn),
    y: cy - (x * Math.sin(turn) + y * Math.cos(turn)),
  }
}

function edge(ellipse: Ellipse, strokePx: number): Shape[] {
  const places = Array.from({ length: 121 }, (_, k) => placeAt(ellipse, 3 * k))
  return doubledLine(outlinePath(places, true), strokePx, 'dashed')
}

function arrow(from: PointPx, deg: number, lengthPx: number, strokePx: number): Shape[] {
  const at = (along: number, across: number): PointPx => {
    const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
    return { x: from.x + along * c - across * s, y: from.y - (along * s + across * c) }
  }
  const tip = at(lengthPx, 0)
  const wing = Math.min(9 * strokePx, lengthPx / 4)
  // The middle stays free: there the rings have their signs.
  const shaft = outlinePath([at(0.3 * lengthPx, 0), at(lengthPx - 2 * wing, 0)], false)
  const head = [tip, at(lengthPx - 2 * wing, wing), at(lengthPx - 2 * wing, -wing)]
  return [
    ...doubledLine(shaft, 3 * strokePx),
    {
      kind: 'path',
      d: outlinePath(head, true),
      fill: 'ink',
      stroke: 'paper',
      strokePx: roundPx(1.5 * strokePx),
    },
  ]
}

/** The order of each line and mark, where no other label stands. */
function orderLabels(seen: SeenOverlay, sizePx: number): Shape[] {
  const lines = [...seen.bandLines].sort((a, b) => b.points.length - a.points.length)
  const wanted = [
    ...lines.flatMap(({ order, points }) => {
      const middle = points[Math.floor(points.length / 2)]
      if (middle === undefined) return []
      return [{ order, at: besideLand(seen, { x: middle[0], y: middle[1] }, sizePx) }]
    }),
    ...(seen.marks ?? []).map((one) => ({ order: one.order, at: besideLand(seen, one, sizePx) })),
  ]
  const placed: { readonly at: PointPx; readonly half: number }[] = []
  return wanted.flatMap(({ order, at }) => {
    const text = String(order)
    const half = halfPx(text, sizePx)
    const isTaken = placed.some(
      (one) =>
        Math.abs(one.at.x - at.x) < one.half + half && Math.abs(one.at.y - at.y) < 1.3 * sizePx,
    )
    if (isTaken) return []
    placed.push({ at, half })
    return label(at, text, sizePx)
  })
}

/**
 * A narrow land would vanish under its labels: they stand outside it, or inside where the picture
 * ends. On a wide one they stand on their lines.
 */
function besideLand(seen: SeenOverlay, on: PointPx, sizePx: number): PointPx {
  const { outer, inner, widthPx, heightPx } = seen
  const landPx = Math.sqrt(outer.rx * outer.ry) - Math.sqrt(inner.rx * inner.ry)
  if (landPx > 4 * sizePx) return on
  const deg = (Math.atan2(outer.cy - on.y, on.x - outer.cx) * 180) / Math.PI
  const [away, near] = [
    placeAt(outer, deg, 1 + sizePx / Math.sqrt(outer.rx * outer.ry)),
    placeAt(inner, deg, 1 - sizePx / Math.sqrt(inner.rx * inner.ry)),
  ]
  const isInside =
    away.x > sizePx && away.x < widthPx - sizePx && away.y > sizePx && away.y < heightPx - sizePx
  return isInside ? away : near
}

/**
 * Band centres or marks with their orders, edges, doubtful sectors and the arrows of the press test, to be
 * laid over a photograph. Every line is dark within a light one, so that nothing depends on colour.
 *
 * @param seen in pixels of the upright photograph
 * @returns the drawing, as large as the photograph
 */
export function seenOverlay(seen: SeenOverlay): Drawing {
  const { widthPx, heightPx, outer, inner, bandLines, doubtfulDeg, arrowsDeg } = seen
  const radiusPx = Math.sqrt(outer.rx * outer.ry)
  const strokePx = roundPx(Math.max(1, radiusPx / 220))
  const sizePx = Math.round(Math.max(12, radiusPx / 12))
  const [nameA, nameB] = seen.arrowTexts
  return {
    widthPx,
    heightPx,
    shapes: [
      ...edge(outer, strokePx),
      ...edge(inner, strokePx),
      ...bandLines.flatMap(({ points }) => {
        const places = points.map(([x, y]) => ({ x, y }))
        return places.length < 2 ? [] : doubledLine(outlinePath(places, false), strokePx)
      }),
      ...(seen.marks ?? []).flatMap(({ x, y }) =>
        doubledLine(circlePath({ x, y }, 4 * strokePx), strokePx),
      ),
      ...orderLabels(seen, sizePx),
      ...doubtfulDeg.flatMap((deg) => label(placeAt(outer, deg, 1.08), '?', sizePx)),
      ...(arrowsDeg === null
        ? []
        : [
            { deg: arrowsDeg, text: nameA },
            { deg: arrowsDeg + 180, text: nameB },
          ].flatMap(({ deg, text }) => {
            const middle = { x: inner.cx, y: inner.cy }
            const lengthPx = 0.8 * Math.min(inner.rx, inner.ry)
            const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
            const at = { x: middle.x + 0.5 * lengthPx * c, y: middle.y - 0.5 * lengthPx * s }
            return [
              ...arrow(middle, deg, lengthPx, strokePx),
              ...label(at, text, Math.round(1.3 * sizePx)),
            ]
          })),
    ],
  }
}
