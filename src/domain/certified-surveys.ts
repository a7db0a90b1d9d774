import type { CertifiedSurvey } from './certified-survey.ts'
import { certifySurvey } from './certify-survey.ts'
import { surveyCharacteristics } from './characteristic.ts'
import type { Evidence } from './evidence.ts'
import { judgedValues } from './judged-evidence.ts'
import { standingValues } from './standing.ts'

/** The surveys whose values no correction replaced, by what was swept, each oldest first. */
export function certifiedSurveys(evidence: Evidence): readonly CertifiedSurvey[] {
  const standing = standingValues(evidence.measuredValues)
  const valid = judgedValues(evidence).filter((one) => one.replacedBy === null)
  return surveyCharacteristics.flatMap((characteristic) =>
    valid
      .filter((one) => one.measured.characteristic === characteristic)
      .flatMap(({ measured, judged }): CertifiedSurvey[] => {
        const survey = evidence.dialSurveys.find((one) => one.end?.measuredValueId === measured.id)
        const result = survey?.end?.result ?? null
        if (survey === undefined || result === null) return []
        const isNewest = standing.includes(measured)
        return [certifySurvey({ survey, result, measured, judged, isNewest })]
      }),
  )
}
