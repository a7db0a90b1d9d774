import type { FC } from 'hono/jsx'
import type { Judged } from '../../src/domain/judged.ts'
import { limitBar } from '../../src/plots/limit-bar.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { resultText } from '../figures/result-text.ts'
import { words } from '../words/en.ts'

/** A result on a bar with its limit, and where the limit comes from. */
export const JudgedBar: FC<{ judged: Judged }> = ({ judged }) => {
  const { characteristic, value, limit } = judged
  if (limit === null || value === null)
    return <p class="small soft">{words.trade.why[judged.why]}</p>
  return (
    <>
      <SvgDrawing
        drawing={limitBar({
          value,
          upperLimit: limit.upper,
          widthPx: 272,
          valueText: resultText(characteristic, value).value,
          limitText: resultText(characteristic, limit.upper).value,
        })}
      />
      <p class="small soft">
        {limit.asWritten}. {words.trade.limitBasis[limit.basis]}: {limit.source}
      </p>
    </>
  )
}
