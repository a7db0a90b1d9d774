import type { SurveyKind, SurveySpot } from '../../src/domain/dial-survey.ts'
import type { Drawing } from '../../src/plots/drawing.ts'
import { endsPicture } from '../../src/plots/ends-picture.ts'
import { type PlanesPictureOptions, planesPicture } from '../../src/plots/planes-picture.ts'
import { surveyDial } from '../../src/plots/survey-dial.ts'
import type { SurveyDialOptions } from '../../src/plots/survey-dial-options.ts'
import { numberText } from '../figures/number-text.ts'

type EndsPictureOptions = Parameters<typeof endsPicture>[0]

/** What stays the same while a survey is read; plain data, for it is handed to the script too. */
export type StageData = {
  readonly kind: SurveyKind
  readonly turn: Pick<
    SurveyDialOptions,
    'surface' | 'anglesDeg' | 'isClockwise' | 'isIndicatorStanding' | 'isClosed'
  > & { readonly turnsCount: number }
  readonly shaft: Pick<PlanesPictureOptions, 'place' | 'planesMm'>
  readonly movement: EndsPictureOptions['movement']
  readonly texts: { readonly mark: string; readonly ends: EndsPictureOptions['texts'] }
}

/** How far it has come. */
export type StageState = {
  /** Null: every position is read. */
  readonly asked: SurveySpot | null
  readonly spots: readonly SurveySpot[]
  readonly isDone: (spot: SurveySpot) => boolean
}

export type StageDrawing = {
  readonly id: 'survey-planes' | 'survey-ends' | 'survey-dial'
  readonly drawing: Drawing
}

/**
 * What to do next, drawn: the turn with its positions, the planes, or the way to push. The server
 * draws a page with it; while it can't be asked, the script of the page draws on.
 */
export function stageDrawings(data: StageData, state: StageState): readonly StageDrawing[] {
  if (data.kind === 'two-ends') return [ends(data, state)]
  return data.kind === 'planes' ? [planes(data, state), turn(data, state)] : [turn(data, state)]
}

function turn({ turn: set, texts }: StageData, { asked, isDone }: StageState): StageDrawing {
  const planeIndex = asked?.planeIndex ?? 0
  const turnIndex = asked?.turnIndex ?? set.turnsCount - 1
  const doneIndexes = set.anglesDeg.flatMap((_, positionIndex) =>
    isDone({ planeIndex, turnIndex, positionIndex, indicator: 'first' }) ? [positionIndex] : [],
  )
  const { drawing } = surveyDial({
    ...set,
    sizePx: 360,
    doneIndexes,
    nextIndex: asked?.positionIndex ?? null,
    texts: { position: (index) => String(index + 1), mark: texts.mark },
  })
  return { id: 'survey-dial', drawing }
}

function planes({ shaft }: StageData, { asked, spots, isDone }: StageState): StageDrawing {
  const isOpen = (index: number) => spots.some((one) => one.planeIndex === index && !isDone(one))
  const drawing = planesPicture({
    ...shaft,
    widthPx: 360,
    doneIndexes: shaft.planesMm.flatMap((_, index) => (isOpen(index) ? [] : [index])),
    nextIndex: asked?.planeIndex ?? null,
    texts: { plane: (index) => String(index + 1), positionMm: (mm) => `${numberText(mm)} mm` },
  })
  return { id: 'survey-planes', drawing }
}

function ends({ movement, texts }: StageData, { asked }: StageState): StageDrawing {
  const end = asked?.positionIndex === 1 ? 1 : 0
  const drawing = endsPicture({ widthPx: 360, movement, end, texts: texts.ends })
  return { id: 'survey-ends', drawing }
}
