import type { Input } from '../domain/fields.ts'

/** A form's input without the fields that are the page's own: the parsers refuse unknown ones. */
export function ownFields(input: Input, ...pageFields: readonly string[]): Input {
  const dropped = ['formKey', ...pageFields]
  return Object.fromEntries(Object.entries(input).filter(([name]) => !dropped.includes(name)))
}
