import type { Child, FC } from 'hono/jsx'
import type { Drawing } from '../../src/plots/drawing.ts'
import { verdictShape } from '../../src/plots/verdict-shape.ts'
import { SvgDrawing } from './svg-drawing.tsx'

const triangle: Drawing = verdictShape('missing', 40)

/** A hazard: triangle, word, and what to mind. `sign` is the word, such as "Caution". */
export const Caution: FC<{ sign: string; title?: string; children: Child }> = (props) => (
  <div class="caution" role="note">
    <SvgDrawing drawing={triangle} />
    <div class="caution-body">
      <p class="caution-word">{props.title ? `${props.sign}: ${props.title}` : props.sign}</p>
      {props.children}
    </div>
  </div>
)
