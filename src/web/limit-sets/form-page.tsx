import { LimitSetFormPage, type LimitSetTyped } from '../../../views/limit-set-form-page.tsx'
import { defaultDirectionsRequiredCount, defaultLimits } from '../../domain/default-limits.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import {
  blankLimitEntry,
  type LimitEntry,
  limitEntry,
  limitEntryFields,
} from '../../domain/limit-entry.ts'
import type { LimitSet, NewLimit } from '../../domain/limit-set.ts'
import {
  defaultUncertaintyShareAtMost,
  limitSetBounds,
  uncertaintySharePercent,
} from '../../domain/parse-limit-set.ts'
import type { AppContext } from '../context.ts'
import { nestedText } from '../nested-text.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { typedText } from '../typed-text.ts'

export type Drawn = {
  readonly typed: LimitSetTyped
  readonly faults: readonly Fault[]
  readonly formKey: string
}

/** The form; `followed` is the set that gets a new version, undefined for a set of a new name. */
export function sendLimitSetForm(
  c: AppContext,
  followed: LimitSet | undefined,
  drawn: Drawn,
): Promise<Response> {
  const { typed, faults } = drawn
  const formKey = drawn.formKey === '' ? newFormKey(c.var.shop.randomBytes) : drawn.formKey
  const next =
    followed === undefined
      ? null
      : { id: followed.id, name: followed.name, version: followed.version + 1, today: today(c) }
  const page = (
    <LimitSetFormPage
      frame={frameOf(c)}
      next={next}
      typed={typed}
      faults={faults}
      formKey={formKey}
    />
  )
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}

/** What the form shows at first: the set that is followed, or the proposed limits. */
export function freshLimitSet(followed: LimitSet | undefined): LimitSetTyped {
  const limits: readonly NewLimit[] = followed?.limits ?? defaultLimits
  const directions = followed?.directionsRequiredCount ?? defaultDirectionsRequiredCount
  const share = followed?.uncertaintyShareAtMost ?? defaultUncertaintyShareAtMost
  return {
    name: '',
    note: '',
    directionsRequiredCount: String(directions),
    uncertaintySharePercent: uncertaintySharePercent(share),
    limits: [...limits.map(limitEntry), blankLimitEntry],
  }
}

/** What was typed, with every limit that the form had, in its place. */
export function typedLimitSet(input: Input): LimitSetTyped {
  const parts: readonly unknown[] = Array.isArray(input.limits) ? Array.from(input.limits) : []
  return {
    name: typedText(input.name),
    note: typedText(input.note),
    directionsRequiredCount: typedText(input.directionsRequiredCount),
    uncertaintySharePercent: typedText(input.uncertaintySharePercent),
    limits: parts.slice(0, limitSetBounds.limitCount.max).map(entryOf),
  }
}

/** The same with one more limit to fill in, as long as a set may have more. */
export function withOneMore(typed: LimitSetTyped): LimitSetTyped {
  const limits = [...typed.limits, blankLimitEntry].slice(0, limitSetBounds.limitCount.max)
  return { ...typed, limits }
}

function entryOf(part: unknown): LimitEntry {
  const typed = limitEntryFields.map((name) => [name, nestedText(part, name)])
  return { ...blankLimitEntry, ...Object.fromEntries(typed) }
}
