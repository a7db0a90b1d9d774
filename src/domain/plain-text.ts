/** A number with every digit and no power of ten: a form must read it back as it was. */
export function plainText(value: number): string {
  const text = String(value)
  if (!text.includes('e')) return text
  return value.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: 17 })
}

/** The same, '' for what is not there. */
export function optionalPlainText(value: number | null): string {
  return value === null ? '' : plainText(value)
}
