import {
  type ConformityTyped,
  conformityNumbers,
} from '../../../views/calculator/conformity-fields.tsx'
import {
  ConformityFragment,
  ConformityPage,
  type ConformityQuestion,
} from '../../../views/conformity-page.tsx'
import { answerConformity } from '../../domain/answer-conformity.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { parseConformityRequest } from '../../domain/parse-conformity-request.ts'
import type { AppContext } from '../context.ts'
import { nestedText } from '../nested-text.ts'
import { nestFields } from '../read-form.ts'
import { asksForFragment, frameOf, sendFragment, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'

/** Everything stands in the address, so that a question can be sent as a link. */
export function showConformity(c: AppContext): Promise<Response> {
  const input = nestFields(new URL(c.req.url).searchParams)
  const isFragment = asksForFragment(c)
  const question = askedIn(input, isFragment)
  if (isFragment) return sendFragment(c, <ConformityFragment question={question} />)
  const page = <ConformityPage frame={frameOf(c)} question={question} />
  return sendPage(c, page, question.faults.length === 0 ? 200 : 422)
}

/** Who opens the page has asked nothing yet; who still types has left nothing out. */
function askedIn(input: Input, isTyping: boolean): ConformityQuestion {
  const typed = typedIn(input)
  if (Object.values(typed).every((text) => text === '')) {
    return { typed, faults: [], decided: 'asked' }
  }
  const parsed = parseConformityRequest(withoutEmptyPrior(input))
  if (parsed.ok) {
    const request = parsed.value
    return { typed, faults: [], decided: { request, answer: answerConformity(request) } }
  }
  const faults = isTyping ? parsed.faults.filter((one) => !isUnfinished(one)) : parsed.faults
  return { typed, faults, decided: faults.length === 0 ? 'asked' : 'faulty' }
}

function isUnfinished({ kind }: Fault): boolean {
  return kind === 'empty' || kind === 'limit-needed'
}

function typedIn(input: Input): ConformityTyped {
  const names = [...conformityNumbers, 'rule', 'nonNegative', 'prior.shape'] as const
  const typed = names.map((name) => {
    const [part = '', inner] = name.split('.')
    const text = inner === undefined ? typedText(input[part]) : nestedText(input[part], inner)
    return [name, text] as const
  })
  return Object.fromEntries(typed) as ConformityTyped
}

/** A form sends every field: a prior of which nothing was stated is none. */
function withoutEmptyPrior(input: Input): Input {
  const { prior, ...rest } = input
  const isEmpty =
    typeof prior === 'object' && prior !== null && Object.values(prior).every((one) => one === '')
  return isEmpty ? rest : input
}
