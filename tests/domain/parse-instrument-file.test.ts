import { expect, test } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import {
  instrumentFileBytesAtMost,
  parseInstrumentFile,
} from '../../src/domain/parse-instrument-file.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'
import { jpeg, jpegParts } from '../support/pictures.ts'

const calibrations = [{ id: 7 }]
const parse = (bytes: Buffer | null, input: Input = {}, name = 'x') =>
  parseInstrumentFile(input, { sent: bytes === null ? null : { name, bytes }, calibrations })

test('keeps of a photo the picture, with a name that says what it is', () => {
  const sent = jpeg({ beside: [jpegParts.exif(), jpegParts.xmp] })
  expect(accepted(parse(sent, {}, 'IMG_1.JPG'))).toEqual({
    calibrationId: null,
    kind: 'photo',
    mediaType: 'image/jpeg',
    name: 'IMG_1.jpg',
    bytes: jpeg(),
  })
})

test('keeps a document as it was sent, of a calibration of the instrument', () => {
  const bytes = Buffer.from('%PDF-1.7')
  expect(accepted(parse(bytes, { calibrationId: '7' }))).toMatchObject({ calibrationId: 7, bytes })
  expect(faultsOf(parse(bytes, { calibrationId: '8' }))).toEqual(['calibrationId not-known'])
  expect(faultsOf(parse(bytes, { calibrationId: 'x' }))).toEqual(['calibrationId not-a-number'])
  expect(accepted(parse(bytes, { calibrationId: '' }))).toMatchObject({ calibrationId: null })
})

test('refuses nothing chosen, nothing in it, too much, another type and half a picture', () => {
  expect(faultsOf(parse(null))).toEqual(['file file-empty'])
  expect(faultsOf(parse(Buffer.alloc(0)))).toEqual(['file file-empty'])
  expect(faultsOf(parse(Buffer.from('504b0304', 'hex')))).toEqual(['file file-type'])
  expect(faultsOf(parse(jpeg().subarray(0, -2)))).toEqual(['file file-broken'])
  const largest = Buffer.alloc(instrumentFileBytesAtMost, 'x')
  expect(faultsOf(parse(largest))).toEqual([])
  expect(faultsOf(parse(Buffer.concat([largest, Buffer.from('x')])))).toEqual([
    'file file-too-large',
  ])
  expect(faultsOf(parse(jpeg(), { file: 'x' }))).toEqual(['file unknown-field'])
})
