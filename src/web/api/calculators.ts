import { answerCountedFlatness } from '../../domain/answer-counted-flatness.ts'
import { answerPressureChange } from '../../domain/answer-pressure-change.ts'
import { parseCountedFlatnessRequest } from '../../domain/parse-counted-flatness-request.ts'
import { parsePressureChangeRequest } from '../../domain/parse-pressure-change-request.ts'
import type { AppContext } from '../context.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCountedFlatness(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerCountedFlatness(mustParse(parseCountedFlatnessRequest(input))))
}

export async function apiPressureChange(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerPressureChange(mustParse(parsePressureChangeRequest(input))))
}
