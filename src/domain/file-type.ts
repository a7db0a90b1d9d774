/** What is kept with an instrument, by what its bytes are. */
export type FileType = {
  readonly kind: 'photo' | 'file'
  readonly mediaType: 'image/jpeg' | 'image/png' | 'image/webp' | 'application/pdf' | TextType
  /** The first is given to a name that ends in none of them. */
  readonly endings: readonly string[]
}
type TextType = 'text/plain; charset=utf-8'

const jpeg: FileType = { kind: 'photo', mediaType: 'image/jpeg', endings: ['jpg', 'jpeg'] }
const png: FileType = { kind: 'photo', mediaType: 'image/png', endings: ['png'] }
const webp: FileType = { kind: 'photo', mediaType: 'image/webp', endings: ['webp'] }
const pdf: FileType = { kind: 'file', mediaType: 'application/pdf', endings: ['pdf'] }
/** CSV too: a table of text has no first bytes of its own, and is never opened as a page. */
const text: FileType = {
  kind: 'file',
  mediaType: 'text/plain; charset=utf-8',
  endings: ['txt', 'csv'],
}

/** First bytes of each: ISO/IEC 10918-1, PNG (W3C), WebP container (RFC 9649), ISO 32000. */
const starts: readonly { readonly type: FileType; readonly at: number; readonly hex: string }[] = [
  { type: jpeg, at: 0, hex: 'ffd8ff' },
  { type: png, at: 0, hex: '89504e470d0a1a0a' },
  { type: pdf, at: 0, hex: '255044462d' },
  { type: webp, at: 8, hex: '57454250' },
]

/**
 * Tells what a file is by its bytes; what its name or its sender says counts for nothing. Undefined
 * where it is none of what is kept.
 */
export function fileType(bytes: Buffer): FileType | undefined {
  const found = starts.find(({ at, hex }) => {
    return bytes.subarray(at, at + hex.length / 2).toString('hex') === hex
  })
  if (found?.type === webp && bytes.subarray(0, 4).toString('latin1') !== 'RIFF') return undefined
  return found?.type ?? (isText(bytes) ? text : undefined)
}

/** UTF-8 throughout, without the control characters that no text has. */
function isText(bytes: Buffer): boolean {
  const decoded = new TextDecoder('utf-8').decode(bytes)
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  return bytes.length > 0 && !/[\u0000-\u0008\u000e-\u001f\u007f\ufffd]/.test(decoded)
}
