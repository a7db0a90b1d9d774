import { typedText } from './typed-text.ts'

/** A field of one part of a posted list, as text; '' where there is none. */
export function nestedText(part: unknown, name: string): string {
  if (typeof part !== 'object' || part === null) return ''
  return typedText((part as Readonly<Record<string, unknown>>)[name])
}
