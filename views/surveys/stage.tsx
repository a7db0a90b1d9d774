import type { FC } from 'hono/jsx'
import { surveyKindOf } from '../../src/domain/dial-survey.ts'
import { spotKey } from '../../src/domain/survey-spots.ts'
import { dialGauge } from '../../src/plots/dial-gauge.ts'
import { endsPicture } from '../../src/plots/ends-picture.ts'
import { planesPicture } from '../../src/plots/planes-picture.ts'
import { surveyDial } from '../../src/plots/survey-dial.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'
import type { Graduation, SurveyPageProps } from './page-props.ts'

/** What to do next, drawn: the turn with its positions, the planes, or the way to push. */
export const SurveyStage: FC<{ page: SurveyPageProps }> = ({ page }) => {
  const { survey } = page
  const kind = surveyKindOf[survey.characteristic]
  return (
    <div class="survey-stage">
      {kind === 'planes' ? <Planes page={page} /> : null}
      {kind === 'two-ends' ? <Ends page={page} /> : <Turn page={page} />}
    </div>
  )
}

const Turn: FC<{ page: SurveyPageProps }> = ({ page: { survey, progress, asked } }) => {
  const { setUp } = survey
  const w = words.surveys
  const planeIndex = asked?.planeIndex ?? 0
  const turnIndex = asked?.turnIndex ?? setUp.turnsCount - 1
  const doneIndexes = setUp.anglesDeg.flatMap((_, positionIndex) => {
    const spot = { planeIndex, turnIndex, positionIndex, indicator: 'first' as const }
    return progress.current.has(spotKey(spot)) ? [positionIndex] : []
  })
  const { drawing } = surveyDial({
    sizePx: 360,
    surface: setUp.surface,
    anglesDeg: setUp.anglesDeg,
    isClockwise: setUp.isClockwise,
    isIndicatorStanding: setUp.turned === 'part',
    doneIndexes,
    nextIndex: asked?.positionIndex ?? null,
    isClosed: setUp.isClosed,
    texts: { position: (index) => String(index + 1), mark: w.mark },
  })
  return <SvgDrawing drawing={drawing} id="survey-dial" title={w.dialTitle} />
}

const Planes: FC<{ page: SurveyPageProps }> = ({ page: { survey, progress, asked } }) => {
  const { planesMm, place } = survey.setUp
  const w = words.surveys
  const isOpen = (index: number) =>
    progress.spots.some((one) => one.planeIndex === index && !progress.current.has(spotKey(one)))
  const drawing = planesPicture({
    widthPx: 360,
    place: place ?? 'machine',
    planesMm,
    doneIndexes: planesMm.flatMap((_, index) => (isOpen(index) ? [] : [index])),
    nextIndex: asked?.planeIndex ?? null,
    texts: { plane: (index) => String(index + 1), positionMm: (mm) => `${numberText(mm)} mm` },
  })
  return <SvgDrawing drawing={drawing} id="survey-planes" title={w.picturePlanes} />
}

const Ends: FC<{ page: SurveyPageProps }> = ({ page: { survey, asked } }) => {
  const w = words.surveys
  const which = survey.characteristic === 'radial-lift' ? 'radial-lift' : 'end-play'
  const [first, second] = w.endsShort[which]
  const drawing = endsPicture({
    widthPx: 360,
    movement: which === 'end-play' ? 'along' : 'up',
    end: asked?.positionIndex === 1 ? 1 : 0,
    texts: { first, second },
  })
  return <SvgDrawing drawing={drawing} id="survey-ends" title={w.pictureEnds} />
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
