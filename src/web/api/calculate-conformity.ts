import { answerConformity } from '../../domain/answer-conformity.ts'
import { parseConformityRequest } from '../../domain/parse-conformity-request.ts'
import type { AppContext } from '../context.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiConformity(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerConformity(mustParse(parseConformityRequest(input))))
}
