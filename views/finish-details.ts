import type { FaceState } from '../src/domain/face-state.ts'
import { figure } from '../src/domain/figure.ts'
import type { MeasuredValue } from '../src/domain/measured-value.ts'
import { printedUnit } from '../src/domain/printed-unit.ts'
import { numberText } from './figures/number-text.ts'
import { certificateWords } from './words/en/certificate.ts'
import { faceStateText } from './words/en/face-state-text.ts'
import { finishWords } from './words/en/finish.ts'

const { conditions } = certificateWords

/** How a finish was traced, and on which face; nothing of anything else. */
export function finishDetails(
  { characteristic, budgetInput, readings }: MeasuredValue,
  faceByLog: FaceState | null,
): readonly string[] {
  if (characteristic !== 'roughness') return []
  const { cutOffMm, evaluationLengthMm, traceDirection, tipRadiusUm, faceState } = budgetInput
  const said = (value: number | null | undefined, tell: (text: string) => string) =>
    value === null || value === undefined ? [] : [tell(numberText(value))]
  const state = faceStateText(faceState ?? null, faceByLog)
  return [
    ...(readings.length === 1 ? [] : [finishWords.traces(readings.length, largestText(readings))]),
    ...said(cutOffMm, conditions.cutOff),
    ...said(evaluationLengthMm, finishWords.evaluation),
    ...(traceDirection == null ? [] : [conditions.traces[traceDirection]]),
    ...said(tipRadiusUm, conditions.tip),
    ...(state === '' ? [] : [state]),
  ]
}

function largestText(readings: MeasuredValue['readings']): string {
  const largestUm = Math.max(...readings.map((one) => one.um))
  return figure(largestUm, printedUnit.roughness.rounding).text
}
