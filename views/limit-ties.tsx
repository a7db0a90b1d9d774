import type { FC } from 'hono/jsx'
import type { Limit } from '../src/domain/limit-set.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { conditionsText } from './figures/conditions-text.ts'
import { words } from './words/en.ts'

/** Pairs of limits between which chance would decide; nothing where there is none. */
export const LimitTies: FC<{
  limits: readonly Limit[]
  ties: readonly (readonly [Limit, Limit])[]
}> = ({ limits, ties }) => {
  const w = words.limitSets
  if (ties.length === 0) return null
  const named = (limit: Limit) =>
    [
      `${w.numberOfLimit(limits.indexOf(limit) + 1)}: ${limit.asWritten}`,
      conditionsText(limit),
    ].join(', ')
  return (
    <section class="stack" aria-labelledby="ties-title">
      <h2 id="ties-title">
        <VerdictMark verdict="missing" word={w.tiesTitle} />
      </h2>
      <p>{w.tiesText}</p>
      <ul>
        {ties.map(([first, second]) => (
          <li>
            <p class="strong">{words.trade.characteristic[first.characteristic]}</p>
            <p>{w.tie(named(first), named(second))}</p>
          </li>
        ))}
      </ul>
    </section>
  )
}
