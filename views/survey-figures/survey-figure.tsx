import type { FC } from 'hono/jsx'
import type { CertifiedSurvey } from '../../src/domain/certified-survey.ts'
import { surveyPicture } from '../../src/plots/survey-picture.ts'
import { Facts } from '../components/facts.tsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { surveyCautionWords } from '../words/en/survey-cautions.ts'
import {
  surveyAlternative,
  surveyPairs,
  surveyPlanePairs,
  surveySetUpPairs,
} from '../words/en/survey-pairs.ts'
import { surveyTexts } from '../words/en/survey-texts.ts'
import { words } from '../words/en.ts'
import { SurveyReadings } from './survey-readings.tsx'

/** A survey: its plots with what they say, how it was set up, and every reading. */
export const SurveyFigure: FC<{
  survey: CertifiedSurvey
  /** One of a kind on the page. */
  id: string
}> = ({ survey, id }) => {
  const w = words.surveyFigures
  const { planes, isClockwise, surface, cautions, limitUm } = survey
  const isFace = surface === 'face'
  return (
    <div class="stack">
      {cautions.map((one) => (
        <p class="survey-caution">{surveyCautionWords[one].what}</p>
      ))}
      <Facts layout="rows" pairs={surveyPairs(survey)} />
      {planes.map((plane, index) => {
        const sweptDiameterMm = survey.sweptDiameterMm?.value ?? null
        const drawn = { plane, isClockwise, isFace, sweptDiameterMm, limitUm }
        return (
          <div class="survey-plane">
            <figure class="survey-plot">
              {plane.positionMm === null ? null : (
                <figcaption class="strong">{w.planeAt(String(plane.positionMm))}</figcaption>
              )}
              <SvgDrawing
                drawing={surveyPicture(drawn, surveyTexts)}
                id={`${id}-plane-${index}`}
                title={surveyAlternative(survey, plane)}
              />
            </figure>
            <Facts layout="rows" pairs={surveyPlanePairs(survey, plane)} />
          </div>
        )
      })}
      <details class="fold">
        <summary>{w.setUp.title}</summary>
        <div class="fold-body">
          <Facts layout="rows" pairs={surveySetUpPairs(survey)} />
        </div>
      </details>
      <SurveyReadings survey={survey} />
    </div>
  )
}
