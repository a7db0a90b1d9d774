import type { SurveySpot } from '../../src/domain/dial-survey.ts'
import { spotKey } from '../../src/domain/survey-spots.ts'
import { type StageData, stageDrawings } from '../surveys/stage-drawings.ts'
import { drawAnew } from './draw-anew.ts'
import { surveyField } from './survey-field.ts'

type Spot = SurveySpot & {
  readonly title: string
  readonly detail: string
  readonly isDone: boolean
}

/**
 * Asks for the next open spot while the server can't, in words and in the picture, as the server
 * would.
 * @param taken keys of the spots that need no reading though the page says so: theirs waits, or was
 *   recorded since the page was drawn
 * @param formKey of the next reading
 */
export function askNextSpot(taken: ReadonlySet<string>, formKey: string): void {
  const form = document.querySelector<HTMLFormElement>('form[data-survey]')
  const value = surveyField('value')
  if (!form || !value) return
  const spots = JSON.parse(form.dataset.spots ?? '[]') as Spot[]
  const keys = new Set(spots.filter((one) => one.isDone).map(spotKey))
  const isDone = (spot: SurveySpot) => keys.has(spotKey(spot)) || taken.has(spotKey(spot))
  const next = spots.find((one) => !isDone(one))
  value.value = ''
  value.disabled = next === undefined
  write(form, '[data-spot-title]', next?.title ?? form.dataset.allTyped ?? '')
  write(form, '[data-spot-detail]', next?.detail ?? '')
  for (const name of ['planeIndex', 'turnIndex', 'positionIndex', 'indicator'] as const) {
    const input = surveyField(name)
    if (input && next) input.value = String(next[name])
  }
  const key = surveyField('formKey')
  if (key) key.value = formKey
  drawStage({ asked: next ?? null, spots, isDone })
  value.focus()
}

function write(form: HTMLFormElement, selector: string, text: string): void {
  const element = form.querySelector(selector)
  if (element) element.textContent = text
}

function drawStage(state: Parameters<typeof stageDrawings>[1]): void {
  const stage = document.querySelector<HTMLElement>('[data-survey-stage]')
  if (!stage) return
  const data = JSON.parse(stage.dataset.surveyStage ?? '') as StageData
  for (const { id, drawing } of stageDrawings(data, state)) {
    const svg = stage.querySelector<SVGElement>(`svg[aria-labelledby="${id}-title"]`)
    if (svg) drawAnew(svg, drawing)
  }
}
