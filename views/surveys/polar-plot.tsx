import type { FC } from 'hono/jsx'
import { type SurveyRecord, surveyKindOf } from '../../src/domain/dial-survey.ts'
import { drawnSurvey } from '../../src/domain/drawn-survey.ts'
import { partialSurvey } from '../../src/domain/partial-survey.ts'
import type { SurveyResult } from '../../src/domain/survey-result.ts'
import { surveyPicture } from '../../src/plots/survey-picture.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { surveyTexts } from '../words/en/survey-texts.ts'
import { words } from '../words/en.ts'

/**
 * One plane of a survey, or what was read of it so far, with its fitted and its limit circles: the
 * drawing that the certificate has.
 */
export const SurveyPolarPlot: FC<{
  survey: SurveyRecord
  result: SurveyResult
  planeIndex: number
  limitUm: number | null
}> = ({ survey, result, planeIndex, limitUm }) => {
  const part = partialSurvey(survey)
  const plane = part === null ? undefined : drawnSurvey(part, result)[planeIndex]
  if (plane === undefined) return null
  const { surveys: w, trade } = words
  const { characteristic, setUp } = survey
  const { isClockwise, sweptDiameterMm } = setUp
  const isFace = surveyKindOf[characteristic] === 'face'
  return (
    <SvgDrawing
      drawing={surveyPicture({ plane, isClockwise, isFace, limitUm, sweptDiameterMm }, surveyTexts)}
      id={`survey-polar-${survey.id}-${planeIndex}`}
      title={w.polarTitle(trade.characteristic[characteristic])}
    />
  )
}
