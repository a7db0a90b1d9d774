import { AppError } from '../../domain/app-error.ts'
import { completeSurvey } from '../../domain/complete-survey.ts'
import type { SurveyRecord } from '../../domain/dial-survey.ts'
import { openFields } from '../../domain/fields.ts'
import { reasonLength } from '../../domain/parse-correction.ts'
import { parseSurveyReading } from '../../domain/parse-survey-readings.ts'
import { parseSurveySetUp } from '../../domain/parse-survey-set-up.ts'
import { surveyInstrumentFaults } from '../../domain/survey-instrument-faults.ts'
import { surveyProgress } from '../../domain/survey-progress.ts'
import { addSurveyReading } from '../../store/add-survey-reading.ts'
import { giveUpDialSurvey, recordDialSurvey } from '../../store/end-dial-survey.ts'
import { listMeasuredValues } from '../../store/list-measured-values.ts'
import { requireDialSurvey } from '../../store/require-dial-survey.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import { requireOpenSurvey } from '../../store/require-open-survey.ts'
import { startDialSurvey } from '../../store/start-dial-survey.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { openSurveyDesk, type SurveyDesk } from './desk.ts'
import { sendSurveyForm } from './form-page.tsx'
import { freshSurveyValues, surveyValuesOf, surveyValuesOfInput } from './form-values.ts'
import { requireReader } from './require-reader.ts'
import { sendSurveyPage } from './survey-page.tsx'

export function newRunOutSurvey(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openSurveyDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const values = listMeasuredValues(store, desk.workOrder.id)
  const replaced = replacedRecord(values, c.req.query('replaces'))
  return sendSurveyForm(c, desk, {
    values: replaced === undefined ? freshSurveyValues(c, desk) : surveyValuesOf(c, replaced, desk),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** Begins a survey; its page asks for the first position. */
export async function createRunOutSurvey(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openSurveyDesk(c)
  const input = await readForm(c)
  const own = ownFields(input)
  const parsed = parseSurveySetUp(own, desk)
  if (!parsed.ok) {
    const values = listMeasuredValues(store, desk.workOrder.id)
    return sendSurveyForm(c, desk, {
      values: surveyValuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(values, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const fresh = { ...parsed.value, workOrderId: desk.workOrder.id }
    return pathOf(desk, startDialSurvey(store, fresh, actor(c)).id)
  })
}

export function showRunOutSurvey(c: AppContext): Promise<Response> {
  const desk = openSurveyDesk(c)
  return sendSurveyPage(c, desk, surveyOf(c, desk), { spot: c.req.query('spot') })
}

/** Keeps one reading and goes on to the next position. */
export async function addRunOutReading(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openSurveyDesk(c)
  const survey = surveyOf(c, desk)
  const input = await readForm(c)
  requireReader(c, input.readerId)
  const own = ownFields(input, 'readerId')
  const parsed = parseSurveyReading(own, survey, desk)
  if (!parsed.ok) {
    const { planeIndex, turnIndex, positionIndex, indicator } = own
    const spot = [planeIndex, turnIndex, positionIndex, indicator].map(typedText).join('-')
    return sendSurveyPage(c, desk, survey, {
      typed: typedText(own.value),
      faults: parsed.faults,
      spot,
    })
  }
  const of = { workOrderId: desk.workOrder.id, surveyId: survey.id }
  return recordOnce(c, input, () => {
    addSurveyReading(store, of, parsed.value, actor(c))
    return pathOf(desk, survey.id)
  })
}

/** Records what was read, or gives it up with a reason. */
export async function endRunOutSurvey(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openSurveyDesk(c)
  const survey = surveyOf(c, desk)
  const input = await readForm(c)
  const of = { workOrderId: desk.workOrder.id, surveyId: survey.id }
  const fields = openFields(ownFields(input))
  const outcome = fields.choice('outcome', ['recorded', 'given-up'] as const)
  const reason = outcome === 'given-up' ? fields.text('reason', reasonLength.max) : ''
  // A form that is sent again finds the survey ended, and gets its first answer.
  const isEnding = outcome === 'recorded' && survey.end === null
  const faults = [...fields.faults, ...(isEnding ? surveyInstrumentFaults(survey, desk) : [])]
  if (faults.length > 0) {
    return sendSurveyPage(c, desk, survey, { faults, giveUpReason: typedText(input.reason) })
  }
  return recordOnce(c, input, () => {
    if (outcome === 'given-up') {
      giveUpDialSurvey(store, { ...of, reason }, actor(c))
      return `/work-orders/${desk.workOrder.number}`
    }
    const open = requireOpenSurvey(store, desk.workOrder.id, survey.id)
    if (surveyProgress(open).next !== null) throw new AppError('conflict', 'spots-missing')
    recordDialSurvey(store, of, completeSurvey(open, desk), actor(c))
    return `/work-orders/${desk.workOrder.number}?recorded=measured-value`
  })
}

function surveyOf(c: AppContext, desk: SurveyDesk): SurveyRecord {
  const id = idOf(c.req.param('id'), 'no-survey')
  return requireDialSurvey(c.var.shop.store, desk.workOrder.id, id)
}

function pathOf(desk: SurveyDesk, id: number): string {
  return `/work-orders/${desk.workOrder.number}/run-out-surveys/${id}`
}
