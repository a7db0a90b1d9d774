import type { FC } from 'hono/jsx'
import { printedRounding } from '../src/domain/certified-judgement.ts'
import { figure } from '../src/domain/figure.ts'
import type { Judged } from '../src/domain/judged.ts'
import type { Limit } from '../src/domain/limit-set.ts'
import { limitText } from './figures/limit-text.ts'
import { words } from './words/en.ts'

const w = words.inspection

/** A limit as it is compared, as its source writes it, and how well it is founded. */
export const JudgedLimit: FC<{ judged: Judged }> = ({ judged }) => {
  const { characteristic, limit, lower, upper } = judged
  if (limit === null) return <p class="soft">{words.recording.noLimitShort}</p>
  const { basis, source, edition, clause, asWritten } = limit
  const whence = [source, edition, clause].filter((one) => one !== '').join(', ')
  const details = [
    asWritten,
    scopeText(limit),
    [words.trade.limitBasis[basis], whence].filter((one) => one !== '').join(': '),
  ]
  return (
    <div>
      <p class="number">{limitText({ characteristic, lower, upper })}</p>
      {details
        .filter((one) => one !== '')
        .map((one) => (
          <p class="cell-detail">{one}</p>
        ))}
    </div>
  )
}

function scopeText({ withinS, volumeAtMostL, startAtLeastKPaGauge }: Limit): string {
  const rounding = printedRounding.startAtLeastKPaGauge
  return [
    ...(withinS === null ? [] : [w.within(withinS)]),
    ...(volumeAtMostL === null ? [] : [w.volumeAtMost(volumeAtMostL)]),
    ...(startAtLeastKPaGauge === null
      ? []
      : [w.startAtLeast(figure(startAtLeastKPaGauge, rounding).text)]),
  ].join(', ')
}
