import type { SurveyRecord } from '../../src/domain/dial-survey.ts'
import { surveyPlotData } from '../../src/domain/survey-plot-data.ts'
import type { SurveyResult } from '../../src/domain/survey-result.ts'
import type { SurveyPolarOptions } from '../../src/plots/survey-polar-options.ts'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'
import { angleText } from './spot-text.ts'
import { umText } from './um-text.ts'

/** What the polar plot of one plane of a survey shows; null for a survey between two ends. */
export function surveyPolarOptions(
  survey: SurveyRecord,
  result: SurveyResult,
  of: { readonly planeIndex: number; readonly limitUm: number | null },
): SurveyPolarOptions | null {
  const data = surveyPlotData(survey, result, of.planeIndex)
  if (data === null) return null
  const { isClockwise, sweptDiameterMm } = survey.setUp
  return {
    ...data,
    sizePx: 420,
    isClockwise,
    closing: [],
    limitUm: of.limitUm,
    sweptDiameterMm,
    texts: polarTexts,
  }
}

const w = words.surveys.polar
const polarTexts: SurveyPolarOptions['texts'] = {
  angle: (deg) => `${angleText(deg)}°`,
  mark: words.surveys.mark,
  scale: (um) => w.scale(umText(um)),
  timesLarger: (times) => w.timesLarger(numberText(Number(times.toPrecision(2)))),
  turn: (index) => w.turn(index + 1),
  closing: w.closing,
  joined: w.joined,
  fitted: w.fitted,
  highest: w.highest,
  limit: w.limit,
  minimumZone: w.minimumZone,
}
