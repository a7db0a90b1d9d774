import { AppError } from '../../domain/app-error.ts'
import type { Input } from '../../domain/fields.ts'
import type { LimitSetStep } from '../../domain/limit-set.ts'
import {
  type ParsedStep,
  parseApproval,
  parseRetirement,
} from '../../domain/parse-limit-set-step.ts'
import type { Parsed } from '../../domain/parsed.ts'
import { addLimitSetStep } from '../../store/add-limit-set-step.ts'
import type { AppContext } from '../context.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { today } from '../today.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { setOf } from './set-of.ts'
import { sendSetPage } from './set-page.tsx'

/** Puts a draft into force from a day: the act of an inspector who did not write it. */
export function approveLimitSet(c: AppContext): Promise<Response> {
  return takeStep(c, 'approved', parseApproval)
}

/** Ends that a set is offered, from a day. */
export function retireLimitSet(c: AppContext): Promise<Response> {
  return takeStep(c, 'retired', parseRetirement)
}

async function takeStep(
  c: AppContext,
  step: LimitSetStep['step'],
  parse: (input: Input, today: string) => Parsed<ParsedStep>,
): Promise<Response> {
  const set = setOf(c)
  const input = await readForm(c)
  const typed = Object.fromEntries(
    ['inForceFrom', 'retiredFrom', 'reason'].map((name) => [name, typedText(input[name])]),
  )
  const parsed = parse(ownFields(input), today(c))
  if (!parsed.ok) return sendSetPage(c, set, { typed, faults: parsed.faults })
  const fresh = { ...parsed.value, limitSetId: set.id, step, by: viewer(c) }
  try {
    return recordOnce(c, input, () => {
      addLimitSetStep(c.var.shop.store, fresh, actor(c))
      return `/limit-sets/${set.id}?${step}`
    })
  } catch (error) {
    if (!(error instanceof AppError) || error.reason === 'key-reused') throw error
    return sendSetPage(c, set, { typed, refusal: error })
  }
}
