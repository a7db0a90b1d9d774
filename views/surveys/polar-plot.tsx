import type { FC } from 'hono/jsx'
import type { SurveyRecord } from '../../src/domain/dial-survey.ts'
import type { SurveyResult } from '../../src/domain/survey-result.ts'
import { surveyPolar } from '../../src/plots/survey-polar.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { words } from '../words/en.ts'
import { surveyPolarOptions } from './polar-options.ts'

/** One plane of a survey, read round the turn, with its fitted and its limit circles. */
export const SurveyPolarPlot: FC<{
  survey: SurveyRecord
  result: SurveyResult
  planeIndex: number
  limitUm: number | null
}> = ({ survey, result, planeIndex, limitUm }) => {
  const options = surveyPolarOptions(survey, result, { planeIndex, limitUm })
  const { surveys: w, trade } = words
  return options === null ? null : (
    <SvgDrawing
      drawing={surveyPolar(options)}
      id={`survey-polar-${survey.id}-${planeIndex}`}
      title={w.polarTitle(trade.characteristic[survey.characteristic])}
    />
  )
}
