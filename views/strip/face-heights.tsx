import type { FC } from 'hono/jsx'
import type { ReadFaceHeight } from '../../src/domain/face-heights.ts'
import { figure } from '../../src/domain/figure.ts'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'

/** Heights of the faces as read with an instrument, beside the smallest that the seal allows. */
export const FaceHeights: FC<{ heights: readonly ReadFaceHeight[] }> = ({ heights }) => {
  const w = words.stripRecords.heights
  return (
    <section class="records" aria-labelledby="face-heights">
      <div class="section-head">
        <h2 id="face-heights">{w.title}</h2>
      </div>
      {heights.length === 0 ? (
        <p class="soft">{w.none}</p>
      ) : (
        <ul class="result-lines">
          {heights.map((one) => (
            <Height one={one} />
          ))}
        </ul>
      )}
    </section>
  )
}

const Height: FC<{ one: ReadFaceHeight }> = ({ one }) => {
  const { lapping, trade, stripRecords } = words
  const { face, mm, condition, minimumMm, marginMm } = one
  const text = (value: number) => figure(value, { decimals: 3 }).text.replace('−', '')
  const isBelow = marginMm !== null && marginMm < 0
  const standing = marginMm === null ? 'unknown' : isBelow ? 'below' : 'kept'
  const sign = { kept: 'pass', below: 'fail', unknown: 'open' } as const
  const margin =
    marginMm === null || minimumMm === null
      ? lapping.lines.noMinimum
      : `${lapping.lines.minimum(numberText(minimumMm))}: ${
          isBelow ? lapping.belowMinimum(text(marginMm)) : lapping.aboveMinimum(text(marginMm))
        }`
  return (
    <li class="result-line">
      <span class="strong">
        {stripRecords.heights.text(
          trade.faceKind[face],
          text(mm),
          stripRecords.conditions[condition],
        )}
      </span>
      <VerdictMark verdict={sign[standing]} word={lapping.standing[standing]} />
      <span class="result-line-detail">{margin}</span>
    </li>
  )
}
