import type { Input } from '../../domain/fields.ts'

/**
 * A direction that was left empty was not read: the form always sends two, so the empty ones at
 * the end are dropped. Straight bands with no count at all are straight both ways, and a saddle
 * needs both; these keep what was sent.
 */
export function dropEmptyDirections(input: Input): Input {
  const parts: readonly unknown[] = Array.isArray(input.readings) ? input.readings : []
  const lastCounted = parts.findLastIndex(isCounted)
  if (input.pattern === 'saddle' || (input.pattern === 'straight' && lastCounted < 0)) return input
  return { ...input, readings: parts.slice(0, Math.max(1, lastCounted + 1)) }
}

function isCounted(part: unknown): boolean {
  if (typeof part !== 'object' || part === null) return false
  const values = part as Readonly<Record<string, unknown>>
  return ['bands', 'bowMm', 'spacingMm'].some((name) => {
    const value = values[name]
    return typeof value === 'string' ? value.trim() !== '' : value !== undefined
  })
}
