import { expect, test } from 'vitest'
import { fileName } from '../../src/domain/file-name.ts'
import { type FileType, fileType } from '../../src/domain/file-type.ts'
import { jpeg, png, webp } from '../support/pictures.ts'

const typeOf = (bytes: Buffer | string) => fileType(Buffer.from(bytes as string))?.mediaType

test('tells what a file is by its first bytes', () => {
  expect(typeOf(jpeg())).toBe('image/jpeg')
  expect(typeOf(png())).toBe('image/png')
  expect(typeOf(webp())).toBe('image/webp')
  expect(typeOf('%PDF-1.7')).toBe('application/pdf')
  expect(typeOf('pressure;error\r\n100;0,1 µm\t')).toBe('text/plain; charset=utf-8')
})

test('takes a page or a drawing with script for the plain text that it is', () => {
  for (const text of ['<html><script>1</script>', '<svg onload="1"/>', '#!/bin/sh']) {
    expect(typeOf(text)).toBe('text/plain; charset=utf-8')
  }
})

test('knows no other file', () => {
  expect(typeOf('')).toBe(undefined)
  expect(typeOf('GIF89a\x01\0')).toBe(undefined)
  expect(typeOf(Buffer.from('504b0304', 'hex'))).toBe(undefined)
  expect(typeOf(Buffer.from('4d5a9000', 'hex'))).toBe(undefined)
  expect(typeOf(Buffer.from('RIFFxxxxWAVEfmt \x10\0', 'latin1'))).toBe(undefined)
  expect(typeOf(Buffer.from('XXXXxxxxWEBP\0\0', 'latin1'))).toBe(undefined)
  expect(typeOf(Buffer.from('e9e8', 'hex'))).toBe(undefined)
})

const typed = (bytes: Buffer | string) => fileType(Buffer.from(bytes as string)) as FileType

test('keeps the last part of a name, and no way out of a folder', () => {
  const pdf = typed('%PDF-1.7')
  expect(fileName('K-12 Gauge.pdf', pdf)).toBe('K-12 Gauge.pdf')
  expect(fileName('C:\\papers\\K-12.PDF', pdf)).toBe('K-12.pdf')
  expect(fileName('../../etc/passwd', pdf)).toBe('passwd.pdf')
  expect(fileName('..', pdf)).toBe('file.pdf')
  expect(fileName('', typed(jpeg()))).toBe('photo.jpg')
  expect(fileName('.pdf', pdf)).toBe('pdf.pdf')
})

test('gives a name the ending of what the file is', () => {
  expect(fileName('page.html', typed('<html>'))).toBe('page.html.txt')
  expect(fileName('points.csv', typed('1;2'))).toBe('points.csv')
  expect(fileName('photo.jpeg', typed(jpeg()))).toBe('photo.jpeg')
  expect(fileName('photo.jpg', typed(png()))).toBe('photo.jpg.png')
})

test('takes signs out of a name that mean something to a header or a reader', () => {
  const text = typed('x')
  expect(fileName('a"b\r\nc*d?.txt', text)).toBe('a_bc_d_.txt')
  // A sign that turns the reading direction would show `exe.txt` as `txt.exe`.
  expect(fileName('a\u202etxt.txt', text)).toBe('atxt.txt')
  expect(fileName('Prüfung 校正.txt', text)).toBe('Prüfung 校正.txt')
})

test('cuts a long name between whole characters', () => {
  const name = fileName(`${'😀'.repeat(200)}.txt`, typed('x'))
  expect(name).toBe(`${'😀'.repeat(58)}.txt`)
  expect(name.length).toBe(120)
})
