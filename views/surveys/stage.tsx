import type { FC } from 'hono/jsx'
import { surveyKindOf } from '../../src/domain/dial-survey.ts'
import { spotKey } from '../../src/domain/survey-spots.ts'
import { dialGauge } from '../../src/plots/dial-gauge.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'
import type { Graduation, SurveyPageProps } from './page-props.ts'
import { type StageData, stageDrawings } from './stage-drawings.ts'

const titles = {
  'survey-planes': words.surveys.picturePlanes,
  'survey-ends': words.surveys.pictureEnds,
  'survey-dial': words.surveys.dialTitle,
} as const

/** What to do next, drawn; the script draws on from the same data. */
export const SurveyStage: FC<{ page: SurveyPageProps }> = ({ page }) => {
  const { progress, asked } = page
  const data = stageDataOf(page)
  const isDone = (spot: Parameters<typeof spotKey>[0]) => progress.current.has(spotKey(spot))
  return (
    <div class="survey-stage" data-survey-stage={JSON.stringify(data)}>
      {stageDrawings(data, { asked, spots: progress.spots, isDone }).map(({ id, drawing }) => (
        <SvgDrawing drawing={drawing} id={id} title={titles[id]} />
      ))}
    </div>
  )
}

function stageDataOf({ survey: { setUp, characteristic } }: SurveyPageProps): StageData {
  const w = words.surveys
  const { surface, anglesDeg, isClockwise, isClosed, turnsCount, place, planesMm } = setUp
  const isIndicatorStanding = setUp.turned === 'part'
  const which = characteristic === 'radial-lift' ? 'radial-lift' : 'end-play'
  const [first, second] = w.endsShort[which]
  return {
    kind: surveyKindOf[characteristic],
    turn: { surface, anglesDeg, isClockwise, isIndicatorStanding, isClosed, turnsCount },
    shaft: { place: place ?? 'machine', planesMm },
    movement: which === 'end-play' ? 'along' : 'up',
    texts: { mark: w.mark, ends: { first, second } },
  }
}

const graduationCount = 100

/** The face of the indicator, to be tapped where its needle stands. */
export const Gauge: FC<{ graduation: Graduation }> = ({ graduation: { step, text } }) => {
  const w = words.surveys
  const { drawing, geometry } = dialGauge({
    sizePx: 320,
    graduationCount,
    numberedEvery: 10,
    needle: null,
    numberText: (graduations) => numberText(graduations),
    unitText: w.graduation(text),
  })
  return (
    <div
      class="survey-gauge"
      data-gauge
      data-centre-x={String(geometry.centre.x)}
      data-centre-y={String(geometry.centre.y)}
      data-dead={String(geometry.deadPx)}
      data-count={String(geometry.graduationCount)}
      data-step-size={String(step)}
    >
      <SvgDrawing drawing={drawing} id="survey-gauge" title={w.gaugeTitle} />
    </div>
  )
}
