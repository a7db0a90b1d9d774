import type { FC } from 'hono/jsx'
import { type VerdictKind, verdictShape } from '../../src/plots/verdict-shape.ts'
import { SvgDrawing } from './svg-drawing.tsx'

/** A verdict as sign and word; the word alone says everything, the sign repeats it. */
export const VerdictMark: FC<{
  verdict: VerdictKind
  word: string
  size?: 'small' | 'large'
}> = ({ verdict, word, size = 'small' }) => (
  <span class={`verdict verdict-${verdict} verdict-${size}`}>
    <span class="verdict-sign">
      <SvgDrawing drawing={verdictShape(verdict, size === 'large' ? 30 : 20)} />
    </span>
    <span>{word}</span>
  </span>
)
