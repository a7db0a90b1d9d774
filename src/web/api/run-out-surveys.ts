import { parseRunOutSurveyBody } from '../../domain/parse-run-out-survey-body.ts'
import { addWholeSurvey } from '../../store/add-whole-survey.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

/** Records a whole survey: its readings, what they say, and the measured value that it becomes. */
export async function apiCreateRunOutSurvey(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return answerOnce(c, body, () => {
    const by = actor(c)
    const context = {
      components: requireSeal(store, order.sealId).components,
      instruments: listInstruments(store),
      exceptions: listUseExceptions(store, order.id),
      today: by.at.slice(0, 10),
    }
    const { survey, ...read } = mustParse(parseRunOutSurveyBody(body.input, context))
    const fresh = { survey: { ...survey, workOrderId: order.id }, ...read }
    const added = addWholeSurvey(store, fresh, context, by)
    const { figures } = added.result.planes[0] ?? {}
    return {
      status: 201,
      body: {
        id: added.survey.id,
        measuredValueId: added.measured.id,
        characteristic: added.measured.characteristic,
        condition: added.measured.condition,
        totalIndicatorReadingUm: added.measured.valueUm,
        eccentricityUm: figures?.eccentricityUm,
        eccentricityDirectionDeg: figures?.eccentricityDirectionDeg,
        fittedRunOutUm: figures?.fittedRunOutUm,
        roundnessLeastSquaresUm: figures?.roundnessLeastSquaresUm,
        roundnessMinimumZoneUm: figures?.roundnessMinimumZoneUm,
        couldBeMissedUm: figures?.couldBeMissedUm,
        tiltMrad: added.result.tilt?.tiltMrad ?? null,
        movementAtSealUm: added.result.tilt?.movementAtSealUm ?? null,
        cautions: added.result.cautions,
        standardUncertaintyUm: added.measured.uncertainty.standardUncertainty,
        expandedUncertaintyUm: added.measured.uncertainty.expandedUncertainty,
        coverageFactor: added.measured.uncertainty.coverageFactor,
        budget: added.measured.uncertainty.budget,
        method: added.measured.method,
        recordedAt: added.measured.recordedAt,
      },
    }
  })
}
