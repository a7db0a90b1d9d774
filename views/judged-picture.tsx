import type { FC } from 'hono/jsx'
import { isWithoutSign } from '../src/domain/is-without-sign.ts'
import type { Judged } from '../src/domain/judged.ts'
import type { Uncertainty } from '../src/domain/uncertainty.ts'
import { decisionPicture } from '../src/plots/decision-picture.ts'
import type { Drawing } from '../src/plots/drawing.ts'
import { limitBar } from '../src/plots/limit-bar.ts'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { probabilityText } from './figures/probability-text.ts'
import { resultText } from './figures/result-text.ts'
import { words } from './words/en.ts'

const w = words.inspection
const widthPx = 320

/** A result with all that is known of it against its limits; nothing without figure or limit. */
export const JudgedPicture: FC<{ judged: Judged; uncertainty: Uncertainty | null }> = (props) => {
  const drawing = drawingOf(props.judged, props.uncertainty)
  return drawing === null ? null : <SvgDrawing drawing={drawing} />
}

function drawingOf(judged: Judged, uncertainty: Uncertainty | null): Drawing | null {
  const { characteristic, value, lower, upper, decision } = judged
  if (value === null || (lower === null && upper === null)) return null
  const text = (one: number | null) => (one === null ? '' : resultText(characteristic, one).value)
  if (decision === null || uncertainty === null) return bareBar(judged, text)
  const { acceptanceLimits, rejectionLimits, conformanceProbability } = decision
  return decisionPicture({
    value,
    expandedUncertainty: uncertainty.expandedUncertainty,
    standardUncertainty: uncertainty.standardUncertainty,
    lowerLimit: lower,
    upperLimit: upper,
    acceptanceLimits,
    rejectionLimits,
    isNonNegative: isWithoutSign(characteristic) && value >= 0,
    labels: {
      lowerLimit: lower === null ? '' : w.atLeast(text(lower)),
      upperLimit: upper === null ? '' : w.atMost(text(upper)),
      lowerAcceptance: text(acceptanceLimits.lower),
      upperAcceptance: text(acceptanceLimits.upper),
      value: text(value),
      beyond: w.beyond(probabilityText(1 - conformanceProbability)),
    },
    widthPx,
  })
}

/** Where no uncertainty says how wide the result is: a pointer over the bar of its limit. */
function bareBar({ value, upper }: Judged, text: (one: number | null) => string): Drawing | null {
  if (value === null || upper === null || upper <= 0) return null
  const limitText = w.atMost(text(upper))
  return limitBar({ value, upperLimit: upper, widthPx, valueText: text(value), limitText })
}
