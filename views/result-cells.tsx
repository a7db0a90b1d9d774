import type { FC } from 'hono/jsx'
import type { CertifiedLimit, Figure } from '../src/domain/certified-results.ts'
import { limitBar } from '../src/plots/limit-bar.ts'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { words } from './words/en.ts'

const w = words.inspection

/** A result as figure, and where there is a limit as a pointer over its bar. */
export const ResultCell: FC<{
  figure: Figure | null
  upper: Figure | null
  unit: string
  details: readonly string[]
}> = ({ figure, upper, unit, details }) => (
  <>
    <span class="strong number">
      {figure === null ? words.chrome.unreadable : `${figure.text} ${unit}`}
    </span>
    {figure === null || upper === null ? null : (
      <SvgDrawing
        drawing={limitBar({
          value: figure.value,
          upperLimit: upper.value,
          widthPx: 190,
          valueText: figure.text,
          limitText: w.atMost(upper.text),
        })}
      />
    )}
    {details
      .filter((one) => one !== '')
      .map((one) => (
        <p class="cell-detail number">{one}</p>
      ))}
  </>
)

/** A limit as it is compared, as its source writes it, and how well it is founded. */
export const LimitCell: FC<{ limit: CertifiedLimit | null; unit: string }> = ({ limit, unit }) =>
  limit === null ? (
    <span class="soft">{words.recording.noLimitShort}</span>
  ) : (
    <>
      <span class="number">{w.atMost(`${limit.upper.text} ${unit}`)}</span>
      <p class="cell-detail">{limit.asWritten}</p>
      {limitScope(limit) === '' ? null : <p class="cell-detail">{limitScope(limit)}</p>}
      <p class="cell-detail">
        {words.trade.limitBasis[limit.basis]}
        {limit.source === '' ? '' : `: ${limit.source}`}
      </p>
    </>
  )

function limitScope(limit: CertifiedLimit): string {
  return [
    ...(limit.withinS === null ? [] : [w.within(limit.withinS)]),
    ...(limit.volumeAtMostL === null ? [] : [w.volumeAtMost(limit.volumeAtMostL)]),
    ...(limit.startAtLeastKPaGauge === null
      ? []
      : [w.startAtLeast(limit.startAtLeastKPaGauge.text)]),
  ].join(', ')
}
