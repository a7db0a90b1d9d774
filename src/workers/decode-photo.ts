import sharp from 'sharp'
import type { Picture } from '../science/photo/linear-channels.ts'

/** What stands in the bytes that can't be read as a photograph. */
export type PhotoFault = 'heic' | 'not-a-photo' | 'damaged' | 'too-many-pixels'

/** A photograph upright, perhaps made smaller by a whole or broken factor. */
export interface DecodedPhoto {
  readonly picture: Picture
  /** Size of the upright photograph before it was made smaller. */
  readonly width: number
  readonly height: number
  /** Pixels of the picture for one of the photograph, at most 1. */
  readonly scale: number
}

export const mostPhotoPixels = 50_000_000
/** Memory for the channels of a larger picture would pass what a small machine has to spare. */
const mostPicturePixels = 3_200_000

/** The kinds that are read, by their first bytes; nothing else ever reaches the decoder. */
function kindOf(bytes: Uint8Array): 'photo' | PhotoFault {
  const starts = (...head: number[]) => head.every((byte, i) => bytes[i] === byte)
  const text = (from: number, to: number) => String.fromCharCode(...bytes.slice(from, to))
  if (starts(0xff, 0xd8, 0xff)) return 'photo'
  if (starts(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'photo'
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP') return 'photo'
  const isHeic = text(4, 8) === 'ftyp' && /^(hei|hev|mif|msf|avi)/.test(text(8, 12))
  return isHeic ? 'heic' : 'not-a-photo'
}

/**
 * Decodes a JPEG, PNG or WebP, upright, as red, green and blue bytes. What a file is called does
 * not matter, only what it begins with.
 *
 * @param bytes of the file
 * @param mostScale the picture is made smaller than the photograph by at least this factor, so that
 *   a face of known size is as large as it needs to be
 * @returns the picture, or what is wrong with the file; it never throws because of the bytes
 */
export async function decodePhoto(
  bytes: Uint8Array,
  mostScale = 1,
): Promise<DecodedPhoto | { readonly fault: PhotoFault }> {
  const kind = kindOf(bytes)
  if (kind !== 'photo') return { fault: kind }
  try {
    const options = { limitInputPixels: false, failOn: 'error' } as const
    const { autoOrient } = await sharp(bytes, options).metadata()
    const { width, height } = autoOrient
    if (width * height > mostPhotoPixels) return { fault: 'too-many-pixels' }
    const byPixels = Math.sqrt(mostPicturePixels / (width * height))
    const scale = Math.min(1, mostScale, byPixels)
    const size = { width: Math.round(width * scale), height: Math.round(height * scale) }
    const upright = sharp(bytes, { ...options, limitInputPixels: mostPhotoPixels }).autoOrient()
    const sized = scale < 1 ? upright.resize({ ...size, fit: 'fill', kernel: 'mitchell' }) : upright
    const { data, info } = await sized
      .flatten({ background: '#000' })
      .toColourspace('srgb')
      .raw()
      .toBuffer({ resolveWithObject: true })
    if (info.channels !== 3) return { fault: 'damaged' }
    const picture = { data: new Uint8Array(data), width: info.width, height: info.height }
    return { picture, width, height, scale }
  } catch {
    // Whatever the decoder objects to lies in the bytes: the file is cut off or made to harm.
    return { fault: 'damaged' }
  }
}
