import type { Bounds, Fields, Input } from './fields.ts'
import { parseDecimal } from './parse-decimal.ts'

/**
 * Reads numbers from a list of a program, or from a line of text, separated by spaces or
 * semicolons: a comma belongs to a number. None where nothing was entered.
 */
export function parseNumberList(
  fields: Fields,
  input: Input,
  of: { readonly name: string; readonly count: Bounds; readonly value: Bounds },
): readonly number[] {
  const { name, count, value: bounds } = of
  const given = input[name]
  const parts: readonly unknown[] = Array.isArray(given)
    ? given
    : fields
        .typed(name)
        .split(/[;\s]+/)
        .filter((one) => one !== '')
  const numbers = parts.map((one) => (typeof one === 'number' ? one : parseDecimal(String(one))))
  const known = numbers.filter((one) => one !== undefined)
  if (known.length < numbers.length) fields.fault(name, 'not-numbers')
  else if (known.length > 0 && known.length < count.min) fields.fault(name, 'too-few', { ...count })
  else if (known.length > count.max) fields.fault(name, 'too-many-numbers', { ...count })
  else if (known.some((one) => one < bounds.min || one > bounds.max)) {
    fields.fault(name, 'below', { ...bounds })
  } else if (new Set(known).size < known.length) fields.fault(name, 'number-twice')
  return known
}
