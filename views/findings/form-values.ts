import type { Fault } from '../../src/domain/fault.ts'
import { findingFields } from '../../src/domain/parse-finding.ts'
import { partLineFields } from '../../src/domain/parse-part-line.ts'
import { ownErrorOf } from '../own-error-of.ts'
import { words } from '../words/en.ts'

export const findingNames = findingFields
export type FindingValues = Readonly<Record<(typeof findingNames)[number], string>>
export const partLineNames = partLineFields
export type PartLineValues = Readonly<Record<(typeof partLineNames)[number], string>>

/** What was typed into a form of the strip bench, with what is wrong with it. */
export type StripTyped<V> = { readonly values: V; readonly faults: readonly Fault[] }

/** Name, typed value and fault of a field, the same for every control. */
export function stripProps<V extends Readonly<Record<string, string>>, N extends keyof V & string>(
  { values, faults }: StripTyped<V>,
  name: N,
) {
  return {
    name,
    value: values[name] as string,
    ...ownErrorOf(faults, name, words.findings.faults),
  }
}
