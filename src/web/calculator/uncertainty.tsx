import type {
  QuantityTyped,
  UncertaintyQuestion,
} from '../../../views/calculator/uncertainty-typed.ts'
import { blankQuantity, exampleQuestion } from '../../../views/calculator/uncertainty-typed.ts'
import { UncertaintyPage } from '../../../views/uncertainty-page.tsx'
import { answerUncertainty } from '../../domain/answer-uncertainty.ts'
import type { Input } from '../../domain/fields.ts'
import {
  parseUncertaintyRequest,
  quantityFields,
  type UncertaintyRequest,
} from '../../domain/parse-uncertainty-request.ts'
import { ModelFault } from '../../science/uncertainty/expression/model-fault.ts'
import type { AppContext } from '../context.ts'
import { nestedText } from '../nested-text.ts'
import { nestFields } from '../read-form.ts'
import { runMonteCarlo } from '../run-monte-carlo.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'

/** Everything stands in the address, so that a question can be sent as a link. */
export async function showUncertainty(c: AppContext): Promise<Response> {
  const input = nestFields(new URL(c.req.url).searchParams)
  const question = await answered(input)
  const page = <UncertaintyPage frame={frameOf(c)} question={question} />
  return sendPage(c, page, question.faults.length === 0 ? 200 : 422)
}

/** Who opens the page sees an example worked out. */
async function answered(input: Input): Promise<UncertaintyQuestion> {
  const typed = Object.keys(input).length === 0 ? exampleQuestion : typedIn(input)
  const parsed = parseUncertaintyRequest(requestOf(typed))
  if (!parsed.ok) return { typed, faults: parsed.faults, answer: null, trials: null }
  try {
    const answer = answerUncertainty(parsed.value)
    return { typed, faults: [], answer, trials: await trialsOf(parsed.value) }
  } catch (error) {
    if (!(error instanceof ModelFault)) throw error
    const faults = [{ field: 'model', kind: `model-${error.kind}` as const }]
    return { typed, faults, answer: null, trials: null }
  }
}

function trialsOf({ model, probability, monteCarlo }: UncertaintyRequest) {
  return monteCarlo === null ? null : runMonteCarlo(model, { ...monteCarlo, probability })
}

function typedIn(input: Input): UncertaintyQuestion['typed'] {
  // Copied, so that a hole in the list is an empty row, not none.
  const rows = Array.isArray(input.quantities) ? Array.from<unknown>(input.quantities) : []
  const quantities = rows
    .map((row): QuantityTyped => {
      const texts = quantityFields.map((name) => [name, nestedText(row, name)])
      return { ...blankQuantity, ...Object.fromEntries(texts) }
    })
    .filter(isTyped)
  const wanted = input.more === undefined ? quantities : [...quantities, blankQuantity]
  return {
    quantities: wanted.length === 0 ? [blankQuantity] : wanted,
    model: typedText(input.model),
    probability: typedText(input.probability),
    trials: typedText(input.trials),
    seed: typedText(input.seed),
  }
}

/**
 * A row in which nothing was typed is none; a form sends every field, and the distribution is
 * chosen before anybody comes. Empty rows stand last, so that faults keep the places of the others.
 */
function isTyped(row: QuantityTyped): boolean {
  return quantityFields.some((name) => name !== 'distribution' && row[name] !== '')
}

function requestOf(typed: UncertaintyQuestion['typed']): Input {
  const { quantities, model, probability, trials, seed } = typed
  const trialsAsked = trials === '' ? {} : { monteCarlo: { trials, seed } }
  return { quantities: quantities.filter(isTyped), model, probability, ...trialsAsked }
}
