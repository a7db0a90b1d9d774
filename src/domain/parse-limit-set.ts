import type { Fault } from './fault.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { limitEntryFields } from './limit-entry.ts'
import type { NewLimitSet } from './limit-set.ts'
import { parseLimit } from './parse-limit.ts'
import type { Parsed } from './parsed.ts'

export const limitSetTextLength = { name: 120, note: 400 } as const
export const limitSetBounds = {
  directionsRequiredCount: { min: 1, max: 8 },
  limitCount: { min: 1, max: 40 },
  uncertaintySharePercent: { min: 1, max: 100 },
} as const

/** A third of the limit (common practice, no source); a set may state another share. */
export const defaultUncertaintyShareAtMost = 1 / 3

export type ParsedLimitSet = Omit<
  NewLimitSet,
  'version' | 'datedOn' | 'writtenById' | 'writtenByName'
>

/**
 * Reads a limit set. A part that is blank, or marked to be left out, is no limit. Limits that tie
 * are let pass: a draft may have them, approval refuses them.
 * @param context name: of the set that this is a new version of; null where it gets its own
 */
export function parseLimitSet(
  input: Input,
  context: { readonly name: string | null },
): Parsed<ParsedLimitSet> {
  const fields = openFields(input)
  const own = context.name === null ? ['name'] : []
  fields.only(...own, 'note', 'directionsRequiredCount', 'uncertaintySharePercent', 'limits')
  const name = context.name ?? fields.text('name', limitSetTextLength.name)
  const note = fields.optionalText('note', limitSetTextLength.note)
  const { directionsRequiredCount: directions, limitCount } = limitSetBounds
  const directionsRequiredCount = fields.whole('directionsRequiredCount', directions)
  const uncertaintyShareAtMost = readShare(fields)
  const limits = fields
    .list('limits', { min: 0, max: limitCount.max })
    .filter((part) => part.typed('leaveOut') === '' && !isBlank(part))
    .map(parseLimit)
  if (limits.length < limitCount.min && !isFaulty(fields.faults, 'limits')) {
    fields.fault('limits', 'too-few', { ...limitCount })
  }
  return fields.finish({ name, note, directionsRequiredCount, uncertaintyShareAtMost, limits })
}

/** In per cent; blank: the common third, which no percentage says exactly. */
function readShare(fields: Fields): number {
  const bounds = limitSetBounds.uncertaintySharePercent
  const percent = fields.optionalDecimal('uncertaintySharePercent', bounds)
  return percent === null ? defaultUncertaintyShareAtMost : percent / 100
}

/** A share as it is typed, '' for the common third; it reads back as exactly the same. */
export function uncertaintySharePercent(share: number): string {
  if (share === defaultUncertaintyShareAtMost) return ''
  return String(Number((share * 100).toPrecision(15)))
}

function isBlank(part: Fields): boolean {
  return limitEntryFields.every((name) => !part.isGiven(name))
}

function isFaulty(faults: readonly Fault[], field: string): boolean {
  return faults.some((one) => one.field === field)
}
