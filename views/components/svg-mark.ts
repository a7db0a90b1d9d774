import type { Dash, Shape } from '../../src/plots/drawing.ts'

export type SvgMark = {
  readonly tag: 'path' | 'line' | 'text'
  readonly attributes: Readonly<Record<string, string | number | undefined>>
  readonly text?: string
}

const dashes: Readonly<Record<Dash, string | undefined>> = {
  solid: undefined,
  dashed: '5 4',
  dotted: '1.5 3.5',
}

/**
 * How one shape is written in SVG. Tones become classes, so the view decides their colour. The
 * server writes its pages with it, and a script in a page draws anew with the same.
 */
export function svgMark(shape: Shape): SvgMark {
  if (shape.kind === 'text') {
    const { x, y, text } = shape
    const attributes = {
      class: `fill-${shape.tone}`,
      x,
      y,
      'font-size': shape.sizePx,
      'font-weight': shape.isStrong ? 600 : 400,
      'text-anchor': shape.anchor,
    }
    return { tag: 'text', attributes, text }
  }
  const stroke = shape.stroke
    ? {
        'stroke-width': shape.strokePx ?? 1,
        'stroke-dasharray': dashFor(shape.dash ?? 'solid', shape.strokePx ?? 1),
      }
    : {}
  if (shape.kind === 'line') {
    const { x1, y1, x2, y2 } = shape
    const tone = `stroke-${shape.stroke ?? 'ink'}`
    return { tag: 'line', attributes: { class: tone, x1, y1, x2, y2, ...stroke } }
  }
  const tones = [`fill-${shape.fill ?? 'none'}`, shape.stroke ? `stroke-${shape.stroke}` : '']
  const look = { class: tones.join(' ').trim(), 'fill-rule': 'evenodd' }
  return { tag: 'path', attributes: { ...look, d: shape.d, ...stroke } }
}

/** Dashes grow with the line, so a heavy one does not turn into a row of squares. */
function dashFor(dash: Dash, strokePx: number): string | undefined {
  const pattern = dashes[dash]
  if (pattern === undefined || strokePx <= 2) return pattern
  return pattern
    .split(' ')
    .map((part) => Number(part) * Math.max(1, strokePx / 2))
    .join(' ')
}
