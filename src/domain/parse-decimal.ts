const decimalPattern = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/

/**
 * Reads a decimal as people write it, with point or comma, and nothing else: `''`, `1e5`, `0x10`,
 * `1,000.5` and `∞` are refused. Empty is not zero. A comma is a decimal comma: `1,000` is one.
 * @returns the number, or undefined where the text is no decimal
 */
export function parseDecimal(text: string): number | undefined {
  const trimmed = text.trim().replace('−', '-')
  if (trimmed.length > 40 || !decimalPattern.test(trimmed)) return undefined
  const value = Number(trimmed.replace(',', '.'))
  // Adding 0 makes the zero of '-0' the one zero.
  return Number.isFinite(value) ? value + 0 : undefined
}
