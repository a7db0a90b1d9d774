import { leakCalculatorWords as words } from '../../../views/words/en/leak-calculators.ts'
import { answerCollected } from '../../domain/answer-collected.ts'
import { answerLeakConvert } from '../../domain/answer-leak-convert.ts'
import { answerPressureChange } from '../../domain/answer-pressure-change.ts'
import { answerStoredEnergy } from '../../domain/answer-stored-energy.ts'
import { parseCollectedRequest } from '../../domain/parse-collected-request.ts'
import { parseLeakConvertRequest } from '../../domain/parse-leak-convert-request.ts'
import { parsePressureChangeRequest } from '../../domain/parse-pressure-change-request.ts'
import { parseStoredEnergyRequest } from '../../domain/parse-stored-energy-request.ts'
import type { AppContext } from '../context.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiPressureChange(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerPressureChange(mustParse(parsePressureChangeRequest(input))))
}

export async function apiCollected(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  return c.json(answerCollected(mustParse(parseCollectedRequest(input))))
}

export async function apiLeakConvert(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  const answer = answerLeakConvert(mustParse(parseLeakConvertRequest(input)))
  const celsius = String(answer.referenceTemperatureC)
  const assumption = answer.assumes.map((one) => words.assumes[one](celsius)).join(' ')
  return c.json({ ...answer, assumption })
}

export async function apiStoredEnergy(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  const answer = answerStoredEnergy(mustParse(parseStoredEnergyRequest(input)))
  return c.json({ ...answer, caution: words.storedEnergyCaution })
}
