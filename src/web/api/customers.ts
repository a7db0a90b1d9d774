import { parseCustomer } from '../../domain/parse-customer.ts'
import { addCustomer } from '../../store/add-customer.ts'
import type { AppContext } from '../context.ts'
import { actor } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCreateCustomer(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { isInvented, store } = c.var.shop
  return answerOnce(c, body, () => {
    const customer = mustParse(parseCustomer(body.input))
    return { status: 201, body: addCustomer(store, { ...customer, isInvented }, actor(c)) }
  })
}
