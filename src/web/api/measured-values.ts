import { completeMeasuredValue } from '../../domain/complete-measured-value.ts'
import { parseMeasuredValue } from '../../domain/parse-measured-value.ts'
import { addMeasuredValue } from '../../store/add-measured-value.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCreateMeasuredValue(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return answerOnce(c, body, () => {
    const by = actor(c)
    const { components } = requireSeal(store, order.sealId)
    const context = {
      components,
      instruments: listInstruments(store),
      exceptions: listUseExceptions(store, order.id),
      today: by.at.slice(0, 10),
    }
    const measured = mustParse(parseMeasuredValue(body.input, context))
    const complete = completeMeasuredValue({ ...measured, workOrderId: order.id }, context)
    return { status: 201, body: addMeasuredValue(store, complete, by) }
  })
}
