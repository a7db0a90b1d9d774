import type { FC } from 'hono/jsx'
import type { Dash, Drawing, Shape } from '../../src/plots/drawing.ts'

const dashes: Readonly<Record<Dash, string | undefined>> = {
  solid: undefined,
  dashed: '5 4',
  dotted: '1.5 3.5',
}

/**
 * A drawing as inline SVG. Tones become classes, so the view decides their colour; there is no
 * inline style. With `title` it is an image with that name, without it is decoration.
 */
export const SvgDrawing: FC<{
  drawing: Drawing
  /** Needed with a title, one of a kind on the page. */
  id?: string
  title?: string
  description?: string
}> = ({ drawing, id = 'drawing', title, description }) => {
  const { widthPx, heightPx } = drawing
  const frame = {
    class: 'drawing',
    width: String(widthPx),
    height: String(heightPx),
    viewBox: `0 0 ${widthPx} ${heightPx}`,
    focusable: 'false',
  }
  const marks = drawing.shapes.map(mark)
  if (title === undefined) {
    return (
      <svg aria-hidden="true" {...frame}>
        {marks}
      </svg>
    )
  }
  return (
    <svg role="img" aria-labelledby={`${id}-title`} {...frame}>
      <title id={`${id}-title`}>{title}</title>
      {description ? <desc>{description}</desc> : null}
      {marks}
    </svg>
  )
}

function mark(shape: Shape) {
  if (shape.kind === 'text') {
    return (
      <text
        class={`fill-${shape.tone}`}
        x={shape.x}
        y={shape.y}
        font-size={shape.sizePx}
        font-weight={shape.isStrong ? 600 : 400}
        text-anchor={shape.anchor}
      >
        {shape.text}
      </text>
    )
  }
  const stroke = shape.stroke
    ? {
        'stroke-width': shape.strokePx ?? 1,
        'stroke-dasharray': dashFor(shape.dash ?? 'solid', shape.strokePx ?? 1),
      }
    : {}
  if (shape.kind === 'line') {
    const { x1, y1, x2, y2 } = shape
    return <line class={`stroke-${shape.stroke ?? 'ink'}`} {...{ x1, y1, x2, y2 }} {...stroke} />
  }
  const tones = [`fill-${shape.fill ?? 'none'}`, shape.stroke ? `stroke-${shape.stroke}` : '']
  return <path class={tones.join(' ').trim()} fill-rule="evenodd" d={shape.d} {...stroke} />
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
