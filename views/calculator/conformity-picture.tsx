import type { FC } from 'hono/jsx'
import type { ConformityAnswer } from '../../src/domain/answer-conformity.ts'
import type { ConformityRequest } from '../../src/domain/parse-conformity-request.ts'
import { uncertainFigure } from '../../src/domain/uncertain-figure.ts'
import { decisionPicture } from '../../src/plots/decision-picture.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { guardText } from '../figures/guard-text.ts'
import { numberText } from '../figures/number-text.ts'
import { percentText } from '../figures/percent-text.ts'
import { words } from '../words/en.ts'

const w = words.conformity

/** The result with all that is known of it, against its limits and those of the rule. */
export const ConformityPicture: FC<{ request: ConformityRequest; answer: ConformityAnswer }> = (
  props,
) => {
  const { request, answer } = props
  const { value, lowerLimit, upperLimit, standardUncertainty, isNonNegative } = request
  const { expandedUncertainty, acceptanceLimits: accepted, rejectionLimits } = answer
  const guard = (limit: number | null) =>
    limit === null ? '' : guardText(limit, expandedUncertainty)
  const labels = {
    lowerLimit: lowerLimit === undefined ? '' : w.atLeast(numberText(lowerLimit)),
    upperLimit: upperLimit === undefined ? '' : w.atMost(numberText(upperLimit)),
    lowerAcceptance: w.acceptedFrom(guard(accepted.lower)),
    upperAcceptance: w.acceptedTo(guard(accepted.upper)),
    value: uncertainFigure({ value, expandedUncertainty }).text,
    beyond: w.beyond(percentText(1 - answer.conformanceProbability)),
  }
  const limits = [labels.lowerLimit, labels.upperLimit].filter((one) => one !== '').join(', ')
  return (
    <SvgDrawing
      id="decision"
      title={w.picture}
      description={w.pictured(labels.value, limits, labels.beyond)}
      drawing={decisionPicture({
        value,
        standardUncertainty,
        expandedUncertainty,
        lowerLimit: lowerLimit ?? null,
        upperLimit: upperLimit ?? null,
        acceptanceLimits: accepted,
        rejectionLimits,
        isNonNegative,
        labels,
        widthPx: 300,
      })}
    />
  )
}
