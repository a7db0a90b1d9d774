import type { FileType } from './file-type.ts'
import { jpegWithoutMetadata } from './jpeg-without-metadata.ts'

/** Chunks of text and EXIF; the others draw the picture (PNG, W3C, third edition). */
const pngDropped = ['eXIf', 'tEXt', 'zTXt', 'iTXt', 'tIME']
const webpDropped = ['EXIF', 'XMP ']

/**
 * A picture without what a phone writes into it beside the picture, above all where it was taken.
 * Undefined where the file is damaged or cut off; other files are given back as they are.
 */
export function pictureWithoutMetadata(bytes: Buffer, type: FileType): Buffer | undefined {
  if (type.mediaType === 'image/jpeg') return jpegWithoutMetadata(bytes)
  if (type.mediaType === 'image/png') return pngWithoutMetadata(bytes)
  if (type.mediaType === 'image/webp') return webpWithoutMetadata(bytes)
  return bytes
}

/** Chunks of length, name, data, checksum; nothing is kept after the last one. */
function pngWithoutMetadata(bytes: Buffer): Buffer | undefined {
  const parts = [bytes.subarray(0, 8)]
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + bytes.readUInt32BE(at)
    if (end > bytes.length) return undefined
    const name = bytes.toString('latin1', at + 4, at + 8)
    if (!pngDropped.includes(name)) parts.push(bytes.subarray(at, end))
    if (name === 'IEND') return Buffer.concat(parts)
    at = end
  }
  return undefined
}

/** RIFF: name, length, data, padded to even; the flags that promise metadata are cleared. */
function webpWithoutMetadata(bytes: Buffer): Buffer | undefined {
  const whole = 8 + bytes.readUInt32LE(4)
  if (whole > bytes.length || whole < 20) return undefined
  const parts: Buffer[] = []
  let at = 12
  while (at + 8 <= whole) {
    const length = bytes.readUInt32LE(at + 4)
    const end = at + 8 + length + (length % 2)
    if (end > whole) return undefined
    const name = bytes.toString('latin1', at, at + 4)
    const chunk = Buffer.from(bytes.subarray(at, end))
    if (name === 'VP8X' && length > 0) chunk.writeUInt8(chunk.readUInt8(8) & ~0x0c, 8)
    if (!webpDropped.includes(name)) parts.push(chunk)
    at = end
  }
  const head = Buffer.from(bytes.subarray(0, 12))
  const size = parts.reduce((sum, one) => sum + one.length, 4)
  head.writeUInt32LE(size, 4)
  return at === whole && parts.length > 0 ? Buffer.concat([head, ...parts]) : undefined
}
