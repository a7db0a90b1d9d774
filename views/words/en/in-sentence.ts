/** A term within a sentence: `Roughness Ra` becomes `roughness Ra`, its symbol stays. */
export function inSentence(term: string): string {
  return `${term.slice(0, 1).toLowerCase()}${term.slice(1)}`
}
