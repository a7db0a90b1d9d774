import type { FC } from 'hono/jsx'
import type { CertifiedLapping } from '../src/domain/certified-lapping.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { finishTexts } from './words/en/finish-texts.ts'
import { words } from './words/en.ts'

/** What the log says of each face that was lapped, in lines that a phone can hold. */
export const LapLines: FC<{ lapping: readonly CertifiedLapping[] }> = ({ lapping }) => (
  <ul class="result-lines">
    {lapping.map((one) => (
      <li class="result-line">
        <span class="strong">{words.trade.faceKind[one.face]}</span>
        <Standing one={one} />
        {details(one).map((text) => (
          <span class="result-line-detail">{text}</span>
        ))}
        {finishTexts(one.finish, minuteText).map(({ text, isAmiss }) => (
          <span class="result-line-told">
            {isAmiss ? <VerdictMark verdict="missing" word={text} /> : text}
          </span>
        ))}
      </li>
    ))}
  </ul>
)

const Standing: FC<{ one: CertifiedLapping }> = ({ one }) => {
  const verdict = { kept: 'pass', below: 'fail', unknown: 'open' } as const
  return <VerdictMark verdict={verdict[one.standing]} word={words.lapping.standing[one.standing]} />
}

function details(one: CertifiedLapping): readonly string[] {
  const { lapping: w } = words
  const { lines } = w
  return [
    [
      lines.cycles(one.cycleCount, one.earlierCycleCount),
      one.isNewRing ? lines.newRing : lines.relaps(one.relapCount),
    ].join(', '),
    heightText(one),
    one.removedUm === null ? lines.removedUnknown : lines.removed(one.removedUm.text),
    minimumText(one),
    ...one.corrections.map(({ byName, at, reason }) =>
      lines.corrected(byName, minuteText(at), reason),
    ),
  ]
}

/** From before the first cycle to now; at most so high where a cycle said nothing of its stock. */
function heightText({
  heightMm,
  heightBeforeMm,
  isHeightRead,
  unknownStockCount,
}: CertifiedLapping): string {
  const { noHeight, atMost, asRead, reckoned, lines } = words.lapping
  if (heightMm === null) return noHeight
  const left = unknownStockCount > 0 ? atMost(heightMm.text) : heightMm.text
  const how = isHeightRead ? asRead : reckoned
  return heightBeforeMm === null
    ? lines.height(left, how)
    : lines.heights(heightBeforeMm.text, left, how)
}

function minimumText({ minimumMm, marginMm, standing }: CertifiedLapping): string {
  const w = words.lapping
  if (minimumMm === null) return w.lines.noMinimum
  const allowed = w.lines.minimum(minimumMm.text)
  if (marginMm === null) return allowed
  const size = marginMm.text.replace('−', '')
  const margin = standing === 'below' ? w.belowMinimum(size) : w.aboveMinimum(size)
  return `${allowed}: ${margin}`
}
