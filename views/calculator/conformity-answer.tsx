import type { FC } from 'hono/jsx'
import type { ConformityAnswer } from '../../src/domain/answer-conformity.ts'
import type { ConformityRequest } from '../../src/domain/parse-conformity-request.ts'
import { Facts } from '../components/facts.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { guardText } from '../figures/guard-text.ts'
import { percentText } from '../figures/percent-text.ts'
import { words } from '../words/en.ts'
import { ConformityPicture } from './conformity-picture.tsx'

export type Decided = { readonly request: ConformityRequest; readonly answer: ConformityAnswer }

const w = words.conformity

/** The outcome in words with its risks and a picture, or what it waits for. */
export const ConformityAnswerPart: FC<{ decided: Decided | 'faulty' | 'asked' }> = (props) => {
  const { decided } = props
  if (decided === 'faulty' || decided === 'asked') {
    return (
      <>
        <p class="result-label">{w.answer}</p>
        <p class="lead">{decided === 'faulty' ? w.faulty : w.ask}</p>
      </>
    )
  }
  const { answer } = decided
  return (
    <>
      <p class="result-label">{words.decision.rule[answer.rule]}</p>
      <p>
        <VerdictMark
          verdict={answer.outcome}
          word={words.decision.outcome[answer.outcome]}
          size="large"
        />
      </p>
      <p>{sentenceOf(answer)}</p>
      <ConformityPicture {...decided} />
      <Facts layout="rows" pairs={factsOf(answer)} />
    </>
  )
}

function sentenceOf(answer: ConformityAnswer): string {
  const { outcome, falseAcceptRisk, falseRejectRisk, probability } = answer
  switch (outcome) {
    case 'pass':
    case 'conditional-pass':
      return w.sentence[outcome](percentText(falseAcceptRisk))
    case 'fail':
    case 'conditional-fail':
      return w.sentence[outcome](percentText(falseRejectRisk))
    case 'undecidable':
      if (answer.isUncertaintyTooLarge) {
        const { uncertaintyShare, uncertaintyShareAtMost } = answer
        return w.tooLarge(percentText(uncertaintyShare ?? 0), percentText(uncertaintyShareAtMost))
      }
      return acceptsNothing(answer) ? w.nothingAccepted : w.notProven(percentText(probability))
  }
}

function factsOf(answer: ConformityAnswer) {
  const { outcome, falseAcceptRisk, falseRejectRisk, uncertaintyShare } = answer
  const isOpen = outcome === 'undecidable'
  const isAccepted = outcome === 'pass' || outcome === 'conditional-pass'
  const { globalFalseAcceptRisk, globalFalseRejectRisk } = answer
  const accept = percentText(falseAcceptRisk)
  const reject = percentText(falseRejectRisk)
  return [
    { label: w.conforms, value: percentText(answer.conformanceProbability) },
    {
      label: w.falseAccept,
      value: isOpen ? w.ifAccepted(accept) : isAccepted ? accept : w.notAccepted,
    },
    {
      label: w.falseReject,
      value: isOpen ? w.ifRejected(reject) : isAccepted ? w.notRejected : reject,
    },
    { label: w.accepts, value: acceptedText(answer) },
    { label: w.rejects, value: rejectedText(answer) },
    ...(uncertaintyShare === null
      ? []
      : [{ label: w.shareTaken, value: percentText(uncertaintyShare) }]),
    ...(globalFalseAcceptRisk === undefined
      ? []
      : [{ label: w.globalAccept, value: percentText(globalFalseAcceptRisk) }]),
    ...(globalFalseRejectRisk === undefined
      ? []
      : [{ label: w.globalReject, value: percentText(globalFalseRejectRisk) }]),
  ]
}

function acceptedText(answer: ConformityAnswer): string {
  if (acceptsNothing(answer)) return w.nothing
  const { lower, upper } = limitTexts(answer, answer.acceptanceLimits)
  if (lower !== null && upper !== null) return w.between(lower, upper)
  return lower !== null ? w.from(lower) : w.to(upper ?? '')
}

function rejectedText(answer: ConformityAnswer): string {
  const { lower, upper } = limitTexts(answer, answer.rejectionLimits)
  if (lower !== null && upper !== null) return w.outside(lower, upper)
  return lower !== null ? w.below(lower) : w.above(upper ?? '')
}

function acceptsNothing({ acceptanceLimits: { lower, upper } }: ConformityAnswer): boolean {
  return lower !== null && upper !== null && lower > upper
}

function limitTexts(answer: ConformityAnswer, pair: ConformityAnswer['acceptanceLimits']) {
  const textOf = (limit: number | null) =>
    limit === null ? null : guardText(limit, answer.expandedUncertainty)
  return { lower: textOf(pair.lower), upper: textOf(pair.upper) }
}
