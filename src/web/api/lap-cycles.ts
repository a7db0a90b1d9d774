import { parseLapCycle } from '../../domain/parse-lap-cycle.ts'
import { addLapCycle } from '../../store/add-lap-cycle.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCreateLapCycle(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return answerOnce(c, body, () => {
    const { components } = requireSeal(store, order.sealId)
    const cycle = mustParse(parseLapCycle(body.input, { components }))
    return { status: 201, body: addLapCycle(store, { ...cycle, workOrderId: order.id }, actor(c)) }
  })
}
