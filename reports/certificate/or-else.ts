import type { Figure } from '../../src/domain/certified-results.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'

/** A text, or the words that stand where there is none: no place on a certificate is blank. */
export function orElse(text: string, words: string): string {
  return text.trim() === '' ? words : text
}

/** A figure with its unit, or the words that stand where there is none. */
export function figureOr(figure: Figure | null, unit: string, words: string): string {
  return figure === null ? words : certificateWords.withUnit(figure.text, unit)
}
