import { expect, test } from 'vitest'
import { jpegWithoutMetadata } from '../../src/domain/jpeg-without-metadata.ts'
import { jpeg, jpegParts } from '../support/pictures.ts'

const all = [
  jpegParts.exif(),
  jpegParts.xmp,
  jpegParts.iptc,
  jpegParts.comment,
  jpegParts.more,
] as const

test('gives a JPEG without place, time and comments, bit by bit as if they had never been', () => {
  const sent = jpeg({ beside: all })
  expect(sent.includes('GPS')).toBe(true)
  expect(jpegWithoutMetadata(sent)).toEqual(jpeg())
  for (const one of all) expect(jpegWithoutMetadata(jpeg({ beside: [one] }))).toEqual(jpeg())
})

test('keeps the colour profile, and a clean JPEG as it is', () => {
  const clean = jpeg({ beside: [jpegParts.profile] })
  expect(jpegWithoutMetadata(clean)).toEqual(clean)
  expect(jpegWithoutMetadata(jpegWithoutMetadata(clean) as Buffer)).toEqual(clean)
})

test('drops the small picture that JFIF may hold, and the one of its extension', () => {
  const sent = jpeg({ hasPreview: true, beside: [jpegParts.preview] })
  expect(sent.includes('GPS')).toBe(true)
  expect(jpegWithoutMetadata(sent)).toEqual(jpeg())
  // An APP0 that is too short to be JFIF is none.
  const short = Buffer.from('ffe000074a46494600', 'hex')
  expect(jpegWithoutMetadata(jpeg({ beside: [short] }))).toEqual(jpeg())
})

test('drops what follows the end, such as the film of a moving photo', () => {
  expect(jpegWithoutMetadata(jpeg({ after: Buffer.from('film, GPS') }))).toEqual(jpeg())
})

test.each([2, 3, 6, 8])('keeps which side is up, orientation %i, and nothing else', (side) => {
  for (const isLittle of [false, true]) {
    const made = jpegWithoutMetadata(jpeg({ beside: [jpegParts.exif(side, isLittle)] }))
    expect(made?.includes('GPS')).toBe(false)
    expect(made?.indexOf('Exif')).toBe(6)
    // Read back by itself, the small EXIF says the same.
    expect(jpegWithoutMetadata(made as Buffer)).toEqual(made)
    expect(made?.length).toBe(jpeg().length + 36)
  }
})

test('takes no orientation that there is not', () => {
  for (const side of [0, 1, 9, 65535]) {
    expect(jpegWithoutMetadata(jpeg({ beside: [jpegParts.exif(side)] }))).toEqual(jpeg())
  }
})

test('does not take a file that is cut off anywhere, or is no row of segments', () => {
  const whole = jpeg({ beside: [jpegParts.exif(6)] })
  for (let length = 2; length < whole.length; length += 1) {
    expect(jpegWithoutMetadata(whole.subarray(0, length)), `cut at ${length}`).toBe(undefined)
  }
  expect(jpegWithoutMetadata(Buffer.from('ffd8ffe00001', 'hex'))).toBe(undefined)
  expect(jpegWithoutMetadata(Buffer.from('ffd8001122', 'hex'))).toBe(undefined)
})

test('reads an EXIF whose offsets lead out of it as one that says nothing', () => {
  const part = jpegParts.exif(6)
  const broken = Buffer.from(part)
  broken.writeUInt32BE(0xfffffff0, 14)
  expect(jpegWithoutMetadata(jpeg({ beside: [broken] }))).toEqual(jpeg())
  const many = Buffer.from(part)
  many.writeUInt16BE(0xffff, 18)
  many.writeUInt16BE(0x9999, 20)
  expect(jpegWithoutMetadata(jpeg({ beside: [many] }))).toEqual(jpeg())
})
