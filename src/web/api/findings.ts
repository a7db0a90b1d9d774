import { parseFinding } from '../../domain/parse-finding.ts'
import { parsePartLine } from '../../domain/parse-part-line.ts'
import { addFinding } from '../../store/add-finding.ts'
import { addPartLine } from '../../store/add-part-line.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCreateFinding(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return answerOnce(c, body, () => {
    const fresh = { ...mustParse(parseFinding(body.input)), workOrderId: order.id, photo: null }
    return { status: 201, body: addFinding(store, fresh, actor(c)) }
  })
}

export async function apiCreatePartLine(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return answerOnce(c, body, () => {
    const fresh = { ...mustParse(parsePartLine(body.input)), workOrderId: order.id }
    return { status: 201, body: addPartLine(store, fresh, actor(c)) }
  })
}
