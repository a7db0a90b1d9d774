import type { FC } from 'hono/jsx'
import type { DialSurvey } from '../../src/domain/dial-survey.ts'
import { surveyKindOf } from '../../src/domain/dial-survey.ts'
import { Facts } from '../components/facts.tsx'
import { numberText } from '../figures/number-text.ts'
import { minuteText } from '../figures/time-text.ts'
import { words } from '../words/en.ts'
import { angleText } from './spot-text.ts'

/** How a survey was set up; nothing blank. */
export const SurveySetUpFacts: FC<{ survey: DialSurvey }> = ({ survey }) => {
  const w = words.surveys
  return (
    <section class="card stack" aria-labelledby="set-up">
      <h2 id="set-up">{w.setUpTitle}</h2>
      <Facts pairs={surveySetUpPairs(survey)} />
      <p class="small soft">{w.begunBy(survey.startedByName, minuteText(survey.startedAt))}</p>
      {survey.note === '' ? null : <p class="small">{survey.note}</p>}
    </section>
  )
}

/** Label and value of everything that was set up. */
export function surveySetUpPairs({ setUp, characteristic, condition }: DialSurvey) {
  const { surveys: w, trade } = words
  const { notRecorded, none, positionsText, sagText } = w.setUp
  const mm = (value: number | null) => (value === null ? notRecorded : `${numberText(value)} mm`)
  const kind = surveyKindOf[characteristic]
  const { sagUm, topAngleDeg, leverAngleDeg } = setUp
  return [
    { label: w.condition, value: trade.condition[condition] },
    { label: w.place, value: setUp.place === null ? notRecorded : w.places[setUp.place] },
    { label: w.lockOut, value: setUp.lockOutReference || notRecorded },
    { label: w.turned, value: w.turnedParts[setUp.turned] },
    ...(kind === 'two-ends'
      ? [{ label: w.turns, value: String(setUp.turnsCount) }]
      : [
          {
            label: w.setUp.positions,
            value: positionsText(setUp.anglesDeg.length, setUp.turnsCount),
          },
          {
            label: w.direction,
            value: w.directions[setUp.isClockwise ? 'clockwise' : 'counter-clockwise'],
          },
          { label: w.swept, value: mm(setUp.sweptDiameterMm) },
          {
            label: w.sag,
            value: sagUm === null ? none : sagText(numberText(sagUm), angleText(topAngleDeg ?? 0)),
          },
        ]),
    ...(kind === 'face'
      ? [
          { label: w.float, value: w.floats[setUp.floatHeld] },
          { label: w.sealMean, value: mm(setUp.sealMeanDiameterMm) },
        ]
      : []),
    { label: w.bore, value: mm(setUp.sizeMm) },
    {
      label: w.contact,
      value: setUp.contact === null ? notRecorded : w.contacts[setUp.contact],
    },
    ...(leverAngleDeg === null ? [] : [{ label: w.lever, value: `${numberText(leverAngleDeg)}°` }]),
  ]
}
