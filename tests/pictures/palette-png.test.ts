import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { deflateSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { palettePng, readPixels } from './palette-png.ts'

/** An RGB picture whose rows carry the filters given, as a browser may choose them. */
function rgbPng(widthPx: number, rows: readonly (readonly number[])[]): Buffer {
  const head = Buffer.alloc(25)
  head.writeUInt32BE(13, 0)
  head.write('IHDR', 4, 'latin1')
  head.writeUInt32BE(widthPx, 8)
  head.writeUInt32BE(rows.length, 12)
  head.set([8, 2, 0, 0, 0], 16)
  const packed = deflateSync(Buffer.from(rows.flat()))
  const data = Buffer.alloc(packed.length + 12)
  data.writeUInt32BE(packed.length, 0)
  data.write('IDAT', 4, 'latin1')
  data.set(packed, 8)
  return Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), head, data])
}

describe('the palette of a picture', () => {
  test('keeps every pixel where there are no more than 256 colours', () => {
    // Rows by each of the five filters; the second pixel of a row differs by 1 from its guess.
    const rows = [0, 1, 2, 3, 4].map((filter) => [filter, 90, 80, 70, 1, 1, 1])
    const png = rgbPng(2, rows)
    const { widthPx, heightPx, colours } = readPixels(png)
    expect({ widthPx, heightPx }).toEqual({ widthPx: 2, heightPx: 5 })
    expect(colours[0]).toBe(0x5a5046)
    expect(colours[1]).toBe(0x010101)
    // Sub: the pixel to the left plus 1.
    expect(colours[3]).toBe(0x5b5147)
    // Up: the pixels of the row above plus this row.
    expect(colours.slice(4, 6)).toEqual(Uint32Array.of(0xb4a08c, 0x5c5248))
    expect(readPixels(palettePng(png)).colours).toEqual(colours)
  })

  test('gives a rare colour its nearest where there are more', () => {
    // 256 reds twice each, then a single one that is hardly green.
    const reds = Array.from({ length: 256 }, (_, red) => [red, 0, 0, red, 0, 0]).flat()
    const png = rgbPng(513, [[0, ...reds, 200, 3, 0]])
    const { colours } = readPixels(palettePng(png))
    expect(colours.at(-1)).toBe(0xc80000)
    expect(colours.slice(0, 512)).toEqual(readPixels(png).colours.slice(0, 512))
  })

  test('refuses what is no PNG', () => {
    expect(() => palettePng(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'))).toThrow(
      'requires a PNG',
    )
  })
})

test('the pictures that README shows are there, and small', () => {
  const root = fileURLToPath(new URL('../..', import.meta.url))
  const readme = readFileSync(`${root}README.md`, 'utf8')
  const shown = [...readme.matchAll(/\]\((views\/pictures\/[\w-]+\.png)\)/g)].map((one) => one[1]!)
  expect(shown.length).toBeGreaterThanOrEqual(4)
  for (const path of shown) {
    const picture = readFileSync(`${root}${path}`)
    expect(readPixels(picture).widthPx, path).toBeGreaterThanOrEqual(390)
    expect(picture.length, path).toBeLessThanOrEqual(200_000)
  }
})
