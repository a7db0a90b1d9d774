import type { Input } from '../../domain/fields.ts'
import { nestedText } from '../nested-text.ts'
import { typedText } from '../typed-text.ts'

/**
 * A posted form always sends more rows than were filled in: empty ones are dropped, so that the
 * rest stand one after the other.
 */
export function dropEmptyRows(input: Input, list: string): Input {
  const given = input[list]
  const rows: readonly unknown[] = Array.isArray(given) ? Array.from(given) : []
  return { ...input, [list]: rows.filter((row) => !isEmptyRow(row)) }
}

function isEmptyRow(row: unknown): boolean {
  if (typeof row !== 'object' || row === null) return true
  return Object.keys(row).every((name) => nestedText(row, name).trim() === '')
}

/** What was typed, by the names of the fields (`loads[0].lengthMm`), to be shown again. */
export function typedValues(input: Input): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(input).flatMap(([name, value]) => {
      if (!Array.isArray(value)) return [[name, typedText(value)]]
      return value.flatMap((row, index) => rowValues(`${name}[${index}]`, row))
    }),
  )
}

function rowValues(name: string, row: unknown): readonly (readonly [string, string])[] {
  if (typeof row !== 'object' || row === null) return []
  return Object.keys(row).map((key) => [`${name}.${key}`, nestedText(row, key)] as const)
}
