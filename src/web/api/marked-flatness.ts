import { answerMarkedFlatness } from '../../domain/answer-marked-flatness.ts'
import { parseMarkedFlatnessRequest } from '../../domain/parse-marked-flatness-request.ts'
import type { AppContext } from '../context.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

/** Fits a whole face to bands that were marked on a picture; the picture itself is not sent. */
export async function apiMarkedFlatness(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(mustParse(answerMarkedFlatness(mustParse(parseMarkedFlatnessRequest(input)))))
}
