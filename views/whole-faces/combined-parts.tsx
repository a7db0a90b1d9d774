import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import type { CombinedSource } from '../../src/domain/whole-face.ts'
import { words } from '../words/en.ts'

/** The readings that a combined one was made of, each with its share; on the page of a result. */
export const CombinedParts: FC<{ source: CombinedSource }> = ({ source }) => {
  const w = words.wholeFaces
  return (
    <ul class="face-parts">
      {source.parts.map(({ readingId, weight, turnDeg, isUpsideDown }, index) => (
        <li>
          {/* Results of one kind stand beside each other. */}
          <a href={`./${readingId}`}>{w.part(index + 1)}</a>
          {`: ${w.partText(figure(100 * weight, { decimals: 0 }).text, figure(turnDeg, { decimals: 0 }).text, isUpsideDown)}`}
        </li>
      ))}
    </ul>
  )
}
