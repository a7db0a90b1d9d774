import type { FC } from 'hono/jsx'
import { verdictShape } from '../../src/plots/verdict-shape.ts'
import { SvgDrawing } from './svg-drawing.tsx'

/** One sentence that something is done or worth knowing, read out when it appears. */
export const Notice: FC<{ kind: 'done' | 'note'; text: string }> = ({ kind, text }) => (
  <p class={`notice notice-${kind}`} role="status">
    {kind === 'done' ? <SvgDrawing drawing={verdictShape('pass', 24)} /> : null}
    <span>{text}</span>
  </p>
)
