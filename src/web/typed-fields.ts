import type { Input } from '../domain/fields.ts'
import { typedText } from './typed-text.ts'

/** What was typed into each of the named fields, as text; '' where nothing was. */
export function typedFields<Name extends string>(
  input: Input,
  names: readonly Name[],
): Readonly<Record<Name, string>> {
  const typed = names.map((name) => [name, typedText(input[name])] as const)
  return Object.fromEntries(typed) as Record<Name, string>
}
