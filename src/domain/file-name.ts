import type { FileType } from './file-type.ts'

/** As long as the table of files takes. */
export const fileNameLength = { max: 120 } as const

/**
 * The name a file is kept and offered under: what was sent, without its folders and signs that
 * mean something to a file system, and with an ending that says what the file really is.
 */
export function fileName(sent: string, type: FileType): string {
  const last = sent.split(/[/\\]/).at(-1) ?? ''
  const plain = last
    .normalize('NFC')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g, '')
    .replace(/["*:<>?|]/g, '_')
    .replace(/^[.\s]+|[.\s]+$/g, '')
  const ending = type.endings.find((one) => plain.toLowerCase().endsWith(`.${one}`))
  const suffix = `.${ending ?? type.endings[0]}`
  const stem = ending === undefined ? plain : plain.slice(0, -suffix.length)
  return `${cut(stem, fileNameLength.max - suffix.length) || type.kind}${suffix}`
}

/** By whole characters, so that none is torn apart. */
function cut(text: string, max: number): string {
  let kept = ''
  for (const sign of text) {
    if (kept.length + sign.length > max) break
    kept += sign
  }
  return kept.trimEnd()
}
