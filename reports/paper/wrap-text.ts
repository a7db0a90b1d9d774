/**
 * Breaks a text into lines no wider than given: at spaces, else after a slash or hyphen, else in
 * the middle of the word. Nothing is left out.
 * @param text single spaces only
 * @param widthOf width of a text, in the unit of `maxWidth`
 * @returns at least one line; '' gives ['']
 * @example wrapText('one two three', 7, (text) => text.length).length // 2
 */
export function wrapText(
  text: string,
  maxWidth: number,
  widthOf: (text: string) => number,
): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (widthOf(longer) <= maxWidth) {
      line = longer
      continue
    }
    if (line !== '') lines.push(line)
    const parts = widthOf(word) <= maxWidth ? [word] : brokenWord(word, maxWidth, widthOf)
    lines.push(...parts.slice(0, -1))
    line = parts.at(-1) ?? ''
  }
  return [...lines, line]
}

function brokenWord(
  word: string,
  maxWidth: number,
  widthOf: (text: string) => number,
): readonly string[] {
  const parts: string[] = []
  let rest = word
  while (rest.length > 1 && widthOf(rest) > maxWidth) {
    const fitting = fittingStart(rest, maxWidth, widthOf)
    parts.push(fitting)
    rest = rest.slice(fitting.length)
  }
  return [...parts, rest]
}

/** As much of the word as fits, at least one character, back to a mark where it may break. */
function fittingStart(word: string, maxWidth: number, widthOf: (text: string) => number): string {
  const characters = [...word]
  let count = 1
  while (
    count < characters.length &&
    widthOf(characters.slice(0, count + 1).join('')) <= maxWidth
  ) {
    count += 1
  }
  const fitting = characters.slice(0, count).join('')
  const mark = Math.max(...['/', '-', '_', '@'].map((one) => fitting.lastIndexOf(one)))
  return mark > 0 ? fitting.slice(0, mark + 1) : fitting
}
