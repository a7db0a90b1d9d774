import { SurveyPage } from '../../../views/survey-page.tsx'
import type { Graduation, SurveyPageProps } from '../../../views/surveys/page-props.ts'
import { appliedLimitOf } from '../../domain/applied-limit-of.ts'
import { completeSurvey } from '../../domain/complete-survey.ts'
import type { SurveyRecord } from '../../domain/dial-survey.ts'
import type { Fault } from '../../domain/fault.ts'
import { orderActs } from '../../domain/order-acts.ts'
import { partialSurvey } from '../../domain/partial-survey.ts'
import { surveyInstrumentFaults } from '../../domain/survey-instrument-faults.ts'
import { surveyProgress } from '../../domain/survey-progress.ts'
import type { SurveyResult } from '../../domain/survey-result.ts'
import { spotKey } from '../../domain/survey-spots.ts'
import { umPerUnit } from '../../domain/um-per-unit.ts'
import { shortDecimal } from '../../science/rounding/short-decimal.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'
import type { SurveyDesk } from './desk.ts'

type Drawn = {
  readonly typed?: string
  readonly faults?: readonly Fault[]
  readonly giveUpReason?: string
  /** The spot that was asked for; the next open one where absent. */
  readonly spot?: string | undefined
}

/** The page of a survey: the next position, or what came of it. */
export function sendSurveyPage(
  c: AppContext,
  desk: SurveyDesk,
  survey: SurveyRecord,
  drawn: Drawn = {},
): Promise<Response> {
  const progress = surveyProgress(survey)
  const chosen = progress.spots.find((one) => spotKey(one) === drawn.spot)
  const faults = drawn.faults ?? []
  const { id, displayName, role } = viewer(c)
  const { canRecord } = orderActs(desk.workOrder, role)
  const canRead = canRecord && survey.end === null
  const page: SurveyPageProps = {
    orderNumber: desk.workOrder.number,
    sealSerial: desk.seal.serial,
    survey,
    reader: { id, name: displayName },
    progress,
    canRead,
    asked: canRead ? (chosen ?? progress.next) : null,
    typed: drawn.typed ?? '',
    faults,
    giveUpReason: drawn.giveUpReason ?? '',
    formKey: newFormKey(c.var.shop.randomBytes),
    graduation: graduationOf(desk, survey),
    result: resultSoFar(desk, survey),
    limitUm: limitOf(desk, survey),
    instrumentStops: canRead ? stopsOf(desk, survey) : [],
  }
  const frame = frameOf(c, ['survey'])
  return sendPage(c, <SurveyPage frame={frame} page={page} />, faults.length > 0 ? 422 : 200)
}

/** What stands against an indicator, with its number, so that an exception can be asked for. */
function stopsOf(desk: SurveyDesk, survey: SurveyRecord): SurveyPageProps['instrumentStops'] {
  return surveyInstrumentFaults(survey, desk).flatMap((fault) => {
    const { instrumentId, secondInstrumentId } = survey.setUp
    const id = fault.field === 'instrumentId' ? instrumentId : secondInstrumentId
    const instrument = desk.instruments.find((one) => one.id === id)
    return instrument === undefined ? [] : [{ fault, id: instrument.id, number: instrument.number }]
  })
}

/** What was recorded; while it is read, what the whole turns or the positions so far say. */
function resultSoFar(desk: SurveyDesk, survey: SurveyRecord): SurveyResult | null {
  if (survey.end !== null) return survey.end.result
  const part = partialSurvey(survey)
  return part === null ? null : completeSurvey(part, desk).result
}

function graduationOf(desk: SurveyDesk, { setUp }: SurveyRecord): Graduation | null {
  const instrument = desk.instruments.find((one) => one.id === setUp.instrumentId)
  const stepUm = umPerUnit('graduations', instrument)
  const factor = umPerUnit(setUp.unit, instrument)
  if (stepUm === null || factor === null || instrument === undefined) return null
  const step = shortDecimal(stepUm / factor)
  return { step, text: `${instrument.resolutionStep} ${instrument.unit}` }
}

/** The movement allowed, where its limit can be worked out. */
function limitOf(desk: SurveyDesk, { characteristic, setUp }: SurveyRecord): number | null {
  const applied = appliedLimitOf(characteristic, desk, { componentId: null, boreMm: setUp.sizeMm })
  return applied?.upper ?? null
}
