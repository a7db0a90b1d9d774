import { answerCountedFlatness } from '../../domain/answer-counted-flatness.ts'
import { answerRunOut } from '../../domain/answer-run-out.ts'
import { answerSpring } from '../../domain/answer-spring.ts'
import { answerStraightness } from '../../domain/answer-straightness.ts'
import { parseCountedFlatnessRequest } from '../../domain/parse-counted-flatness-request.ts'
import { parseRunOutRequest } from '../../domain/parse-run-out-request.ts'
import { parseSpringRequest } from '../../domain/parse-spring-request.ts'
import { parseStraightnessRequest } from '../../domain/parse-straightness-request.ts'
import type { AppContext } from '../context.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCountedFlatness(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerCountedFlatness(mustParse(parseCountedFlatnessRequest(input))))
}

export async function apiRunOut(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerRunOut(mustParse(parseRunOutRequest(input))))
}

export async function apiStraightness(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerStraightness(mustParse(parseStraightnessRequest(input))))
}

export async function apiSpring(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerSpring(mustParse(parseSpringRequest(input))))
}
