import type { FC } from 'hono/jsx'
import type { Judged } from '../src/domain/judged.ts'
import type { Uncertainty } from '../src/domain/uncertainty.ts'
import { limitBar } from '../src/plots/limit-bar.ts'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { resultText } from './figures/result-text.ts'
import { words } from './words/en.ts'

/** A result and its interval against the limits; nothing where there is no figure or no limit. */
export const JudgedPicture: FC<{ judged: Judged; uncertainty: Uncertainty | null }> = (props) => {
  const { judged } = props
  const { characteristic, value, upper } = judged
  if (value === null || upper === null || upper <= 0) return null
  const limitText = resultText(characteristic, upper).value
  return (
    <SvgDrawing
      drawing={limitBar({
        value,
        upperLimit: upper,
        widthPx: 260,
        valueText: resultText(characteristic, value).value,
        limitText: words.inspection.atMost(limitText),
      })}
    />
  )
}
