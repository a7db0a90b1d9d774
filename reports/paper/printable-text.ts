/**
 * Text as it can be printed in one line: white space of any kind becomes single spaces, and a
 * character for which the font has no glyph is named instead of left blank.
 * @param hasGlyph whether the font can print a code point
 * @example printableText('a\t中', (point) => point < 128) // a [U+4E2D]
 */
export function printableText(text: string, hasGlyph: (point: number) => boolean): string {
  const spaced = text.normalize('NFC').replace(/\s+/gu, ' ').trim()
  return [...spaced]
    .map((character) => {
      const point = character.codePointAt(0) ?? 0
      return hasGlyph(point) ? character : `[U+${hex(point)}]`
    })
    .join('')
}

function hex(point: number): string {
  return point.toString(16).toUpperCase().padStart(4, '0')
}
