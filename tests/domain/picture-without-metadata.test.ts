import { expect, test } from 'vitest'
import { fileType } from '../../src/domain/file-type.ts'
import { pictureWithoutMetadata } from '../../src/domain/picture-without-metadata.ts'
import { jpeg, jpegParts, png, webp } from '../support/pictures.ts'

function cleaned(bytes: Buffer): Buffer | undefined {
  const type = fileType(bytes)
  if (type === undefined) throw new Error('the test gives a file of a known type')
  return pictureWithoutMetadata(bytes, type)
}

test('takes the metadata out of each kind of picture', () => {
  expect(cleaned(jpeg({ beside: [jpegParts.xmp] }))).toEqual(jpeg())
  const beside = [
    ['eXIf', 'GPS'],
    ['tEXt', 'GPS'],
    ['iTXt', 'GPS'],
    ['tIME', 'GPS'],
  ] as const
  expect(cleaned(png(beside))).toEqual(png())
  const ofWebp = [
    ['EXIF', 'GPS'],
    ['XMP ', 'GPS'],
  ] as const
  expect(cleaned(webp(ofWebp))).toEqual(webp())
})

test('keeps what draws the picture, and clean pictures as they are', () => {
  const coloured = png([['iCCP', 'profile']])
  expect(cleaned(coloured)).toEqual(coloured)
  expect(cleaned(webp())).toEqual(webp())
})

test('drops what follows the end of a PNG or WebP', () => {
  expect(cleaned(Buffer.concat([png(), Buffer.from('GPS')]))).toEqual(png())
  expect(cleaned(Buffer.concat([webp(), Buffer.from('GPS')]))).toEqual(webp())
})

test('does not take one that is cut off anywhere', () => {
  for (const whole of [png(), webp()]) {
    for (let length = 12; length < whole.length; length += 1) {
      expect(cleaned(whole.subarray(0, length)), `cut at ${length}`).toBe(undefined)
    }
  }
})

test('gives a document back as it is', () => {
  for (const text of ['%PDF-1.7 GPS', 'pressure;error\n100;0,1']) {
    expect(cleaned(Buffer.from(text))).toEqual(Buffer.from(text))
  }
})
