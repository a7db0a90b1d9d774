/** A field of a posted form as text: '' where it was absent or is no single text. */
export function typedText(value: unknown): string {
  return typeof value === 'string' ? value : ''
}
