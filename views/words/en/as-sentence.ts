/** What somebody typed, at the end of a sentence: with one stop, their own or ours. */
export function asSentence(typed: string): string {
  const text = typed.trim()
  return /[.!?…]$/.test(text) ? text : `${text}.`
}
