import { type FC, jsx } from 'hono/jsx'
import type { Drawing, Shape } from '../../src/plots/drawing.ts'
import { svgMark } from './svg-mark.ts'

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
  const { tag, attributes, text } = svgMark(shape)
  return jsx(tag, attributes, text ?? null)
}
