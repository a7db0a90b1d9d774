/**
 * Reads the number of a work order as it is typed or scanned: `W-2026-0042`, `w-2026-42`, `w 42`
 * and `42` are the same in 2026.
 * @param year of the order where none is typed
 * @returns the number as it is written on the tag, or undefined where the text is none
 * @example parseOrderNumber('  w-2026-42 ', 2026) // W-2026-0042
 */
export function parseOrderNumber(typed: string, year: number): string | undefined {
  const match = /^(?:w[\s-]*)?(?:(\d{4})[\s-]+)?(\d{1,6})$/i.exec(typed.trim())
  const sequence = match?.[2]
  if (sequence === undefined) return undefined
  return `W-${match?.[1] ?? year}-${String(Number(sequence)).padStart(4, '0')}`
}
