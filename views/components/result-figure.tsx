import type { FC } from 'hono/jsx'
import type { VerdictKind } from '../../src/plots/verdict-shape.ts'
import { VerdictMark } from './verdict-mark.tsx'

/** One result to be read at arm's length: number, doubt, unit, the other unit, the verdict. */
export const ResultFigure: FC<{
  label: string
  value: string
  /** What follows the value: `± 0.071`. */
  doubt?: string | undefined
  unit: string
  second?: { readonly value: string; readonly unit: string } | undefined
  limit?: string | undefined
  verdict?: VerdictKind | undefined
  word?: string | undefined
  id?: string
  /** Read out by assistive technology whenever it changes. */
  isLive?: boolean
}> = (props) => {
  const { label, value, doubt, unit, second, limit, verdict, word, id, isLive } = props
  return (
    <div class="result" id={id} role={isLive ? 'status' : undefined}>
      <p class="result-label">{label}</p>
      <p class="result-value">
        <span class="result-number">{value}</span>{' '}
        {doubt ? <span class="result-doubt">{doubt}</span> : null}{' '}
        <span class="result-unit">{unit}</span>
      </p>
      {second ? (
        <p class="result-second">
          {second.value} {second.unit}
        </p>
      ) : null}
      {limit ? <p class="result-limit">{limit}</p> : null}
      {verdict && word ? (
        <p class="result-verdict">
          <VerdictMark verdict={verdict} word={word} size="large" />
        </p>
      ) : null}
    </div>
  )
}
