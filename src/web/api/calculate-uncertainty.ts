import { answerUncertainty } from '../../domain/answer-uncertainty.ts'
import {
  parseUncertaintyRequest,
  type UncertaintyRequest,
} from '../../domain/parse-uncertainty-request.ts'
import { ModelFault } from '../../science/uncertainty/expression/model-fault.ts'
import type { AppContext } from '../context.ts'
import { runMonteCarlo } from '../run-monte-carlo.ts'
import { InputRefused } from './input-refused.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiUncertainty(c: AppContext): Promise<Response> {
  const { input } = await readJson(c)
  const request = mustParse(parseUncertaintyRequest(input))
  try {
    return c.json({ ...answerUncertainty(request), ...(await trialsOf(request)) })
  } catch (error) {
    if (!(error instanceof ModelFault)) throw error
    throw new InputRefused([{ field: 'model', kind: `model-${error.kind}` }])
  }
}

/** The plot is for pages: a program has the numbers. */
async function trialsOf({ model, probability, monteCarlo }: UncertaintyRequest) {
  if (monteCarlo === null) return {}
  const { histogram: _, ...numbers } = await runMonteCarlo(model, { ...monteCarlo, probability })
  return { monteCarlo: numbers }
}
