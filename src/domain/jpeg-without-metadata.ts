/** Dimensions, tables and colours stay; of the rest only what a decoder needs. */
const kept = { jfif: 0xe0, icc: 0xe2, adobe: 0xee } as const
/** Marker, length, name, version, density and the size of a small picture; then that picture. */
const jfifLength = 18
const endOfImage = 0xd9
const startOfScan = 0xda

/**
 * A JPEG without what a camera writes beside the picture: place, time, owner, preview (EXIF, XMP,
 * IPTC, comments, the small pictures of JFIF), and without what follows its end. Which side is up
 * stays, in an EXIF of that alone. Undefined where the file is damaged or cut off.
 * Source: ISO/IEC 10918-1 Annex B (markers), ISO/IEC 10918-5 (JFIF), Exif 2.32 (orientation
 * 0x0112), all from memory.
 */
export function jpegWithoutMetadata(bytes: Buffer): Buffer | undefined {
  const parts: Buffer[] = [bytes.subarray(0, 2)]
  let orientation = 1
  let at = 2
  while (at + 2 <= bytes.length) {
    if (bytes[at] !== 0xff) return undefined
    const marker = bytes.readUInt8(at + 1)
    if (marker === 0xff) {
      at += 1
    } else if (marker === endOfImage) {
      const [start, ...rest] = parts
      const upright = orientation === 1 ? [] : [exifOf(orientation)]
      return Buffer.concat([start as Buffer, ...upright, ...rest, bytes.subarray(at, at + 2)])
    } else {
      const end = endOfSegment(bytes, at)
      if (end === undefined) return undefined
      const segment = bytes.subarray(at, end)
      if (marker === 0xe1) orientation = orientationOf(segment) ?? orientation
      if (isKept(marker, segment)) parts.push(marker === kept.jfif ? bareJfif(segment) : segment)
      at = end
    }
  }
  return undefined
}

/** A scan's data has no length: it goes on to the next marker that is not a restart. */
function endOfSegment(bytes: Buffer, at: number): number | undefined {
  if (at + 4 > bytes.length) return undefined
  let end = at + 2 + bytes.readUInt16BE(at + 2)
  if (end < at + 4 || end > bytes.length) return undefined
  if (bytes[at + 1] !== startOfScan) return end
  for (; end + 1 < bytes.length; end += 1) {
    const next = bytes.readUInt8(end + 1)
    const isRestart = next >= 0xd0 && next <= 0xd7
    if (bytes[end] === 0xff && next !== 0 && next !== 0xff && !isRestart) return end
  }
  return undefined
}

function isKept(marker: number, segment: Buffer): boolean {
  if (marker === 0xfe) return false
  const isApplication = marker >= 0xe0 && marker <= 0xef
  if (!isApplication) return true
  // APP2 holds the colour profile, but also second pictures with metadata of their own.
  if (marker === kept.icc) return segment.toString('latin1', 4, 15) === 'ICC_PROFILE'
  // APP0 also holds the extension JFXX, which is nothing but a second picture.
  if (marker === kept.jfif) return isJfif(segment)
  return marker === kept.adobe
}

function isJfif(segment: Buffer): boolean {
  return segment.length >= jfifLength && segment.toString('latin1', 4, 9) === 'JFIF\0'
}

/** A preview may show what was cut away: it goes, and its size is 0 by 0. */
function bareJfif(segment: Buffer): Buffer {
  const bare = Buffer.from(segment.subarray(0, jfifLength))
  bare.writeUInt16BE(jfifLength - 2, 2)
  bare.writeUInt16BE(0, jfifLength - 2)
  return bare
}

/** Out of the first directory of an EXIF segment; undefined where it says nothing. */
function orientationOf(segment: Buffer): number | undefined {
  const tiff = segment.subarray(10)
  if (segment.toString('latin1', 4, 8) !== 'Exif' || tiff.length < 8) return undefined
  const isLittle = tiff.toString('latin1', 0, 2) === 'II'
  const u16 = (at: number) => (isLittle ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at))
  const directory = isLittle ? tiff.readUInt32LE(4) : tiff.readUInt32BE(4)
  if (directory + 2 > tiff.length) return undefined
  for (let n = 0; n < u16(directory); n += 1) {
    const entry = directory + 2 + 12 * n
    if (entry + 12 > tiff.length) return undefined
    const value = u16(entry + 8)
    if (u16(entry) === 0x0112) return value >= 1 && value <= 8 ? value : undefined
  }
  return undefined
}

function exifOf(orientation: number): Buffer {
  const head = Buffer.from('ffe10022457869660000', 'hex')
  const directory = Buffer.from('4d4d002a00000008000101120003000000010000000000000000', 'hex')
  directory.writeUInt16BE(orientation, 18)
  return Buffer.concat([head, directory])
}
