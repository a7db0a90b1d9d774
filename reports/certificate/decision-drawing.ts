import type { CertifiedResult } from '../../src/domain/certified-decision.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { decisionPicture } from '../../src/plots/decision-picture.ts'
import { certificateDecisionWords as words } from '../../views/words/en/certificate-decisions.ts'
import type { Picture } from '../document.ts'
import { limitThatHolds, valueWithUnit } from './decision-names.ts'

/** As narrow as the picture can be: it is scaled into its cell. */
const widthPx = 240

/** The picture of a decision; undefined where nothing was weighed. */
export function decisionDrawing(result: CertifiedResult): Picture | undefined {
  const { decision, uncertainty, value, lower, upper, text, beyondPercent } = result
  if (decision === null || uncertainty === null || value === null) return undefined
  const { storedPerPrinted } = printedUnit[result.characteristic]
  const printed = (stored: number) => stored / storedPerPrinted
  const side = (stored: number | null) => (stored === null ? null : printed(stored))
  const { acceptanceLimits, rejectionLimits } = decision
  return {
    drawing: decisionPicture({
      value: value.value,
      standardUncertainty: printed(uncertainty.standardUncertainty),
      expandedUncertainty: printed(uncertainty.expandedUncertainty),
      lowerLimit: lower?.value ?? null,
      upperLimit: upper?.value ?? null,
      acceptanceLimits: {
        lower: side(acceptanceLimits.lower),
        upper: side(acceptanceLimits.upper),
      },
      rejectionLimits: { lower: side(rejectionLimits.lower), upper: side(rejectionLimits.upper) },
      labels: {
        lowerLimit: lower?.text ?? '',
        upperLimit: upper?.text ?? '',
        lowerAcceptance: '',
        upperAcceptance: '',
        value: text,
        beyond: beyondPercent === null ? '' : words.beyond(beyondPercent.text),
      },
      widthPx,
    }),
    alternative: words.pictureAlternative(valueWithUnit(result), limitThatHolds(result)),
  }
}
