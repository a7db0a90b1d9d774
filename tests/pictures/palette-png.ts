import { crc32, deflateSync, inflateSync } from 'node:zlib'

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
const largestPalette = 256

type Pixels = {
  readonly widthPx: number
  readonly heightPx: number
  /** 0xRRGGBB each, row by row. */
  readonly colours: Uint32Array
}

/**
 * A picture of a page with at most 256 colours, its most frequent ones; others take the nearest.
 * Pages have few colours and the edges of letters many: half the bytes, and no eye sees it.
 * @param png 8 bits a channel, RGB or opaque RGBA, not interlaced: what browsers write
 */
export function palettePng(png: Buffer): Buffer {
  const { widthPx, heightPx, colours } = readPixels(png)
  const palette = frequentColours(colours)
  const indexOf = new Map(palette.map((colour, index) => [colour, index]))
  // A 0 before each row: not filtered, which suits a palette best.
  const rows = Buffer.alloc(heightPx * (widthPx + 1))
  colours.forEach((colour, at) => {
    const index = indexOf.get(colour) ?? nearest(palette, colour)
    indexOf.set(colour, index)
    rows[at + Math.floor(at / widthPx) + 1] = index
  })
  const head = Buffer.alloc(13)
  head.writeUInt32BE(widthPx, 0)
  head.writeUInt32BE(heightPx, 4)
  head.set([8, 3, 0, 0, 0], 8)
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('PLTE', Buffer.from(palette.flatMap((one) => [one >> 16, (one >> 8) & 255, one & 255]))),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

function frequentColours(colours: Uint32Array): readonly number[] {
  const counts = new Map<number, number>()
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1)
  return [...counts]
    .sort(([one, oneCount], [two, twoCount]) => twoCount - oneCount || one - two)
    .slice(0, largestPalette)
    .map(([colour]) => colour)
}

function nearest(palette: readonly number[], colour: number): number {
  const apart = (one: number) =>
    ((one >> 16) - (colour >> 16)) ** 2 +
    (((one >> 8) & 255) - ((colour >> 8) & 255)) ** 2 +
    ((one & 255) - (colour & 255)) ** 2
  const distances = palette.map(apart)
  return distances.indexOf(Math.min(...distances))
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data])
  const framed = Buffer.alloc(named.length + 8)
  framed.writeUInt32BE(data.length, 0)
  framed.set(named, 4)
  framed.writeUInt32BE(crc32(named), named.length + 4)
  return framed
}

/** Also for tests, which look at what became of a picture. */
export function readPixels(png: Buffer): Pixels {
  if (!png.subarray(0, 8).equals(signature)) throw new Error('readPixels requires a PNG')
  const [widthPx, heightPx] = [png.readUInt32BE(16), png.readUInt32BE(20)]
  const [depth, type, , , interlace] = png.subarray(24, 29)
  const channelCount = { 2: 3, 3: 1, 6: 4 }[type ?? 0]
  if (depth !== 8 || interlace !== 0 || channelCount === undefined) {
    throw new Error(`readPixels requires 8 bits of RGB, RGBA or palette, got ${depth}, ${type}`)
  }
  const rows = unfiltered(inflateSync(chunksOf(png, 'IDAT')), widthPx * channelCount, channelCount)
  const palette = chunksOf(png, 'PLTE')
  const colours = Uint32Array.from({ length: widthPx * heightPx }, (_, at) => {
    const [from, from3] = [at * channelCount, (rows[at] ?? 0) * 3]
    const [source, start] = type === 3 ? [palette, from3] : [rows, from]
    return source.readUIntBE(start, 3)
  })
  return { widthPx, heightPx, colours }
}

function chunksOf(png: Buffer, type: string): Buffer {
  const parts: Buffer[] = []
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at)
    if (png.toString('latin1', at + 4, at + 8) === type) {
      parts.push(png.subarray(at + 8, at + 8 + length))
    }
    at += length + 12
  }
  return Buffer.concat(parts)
}

/** Takes back the five filters of PNG (specification, section 9), row by row. */
function unfiltered(filtered: Buffer, rowBytes: number, channelCount: number): Buffer {
  const heightPx = filtered.length / (rowBytes + 1)
  const plain = Buffer.alloc(heightPx * rowBytes)
  for (let row = 0; row < heightPx; row++) {
    const filter = filtered[row * (rowBytes + 1)]
    for (let x = 0; x < rowBytes; x++) {
      const at = row * rowBytes + x
      const left = x < channelCount ? 0 : plain[at - channelCount]!
      const up = row === 0 ? 0 : plain[at - rowBytes]!
      const upLeft = row === 0 || x < channelCount ? 0 : plain[at - rowBytes - channelCount]!
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, upLeft)][filter ?? 0] ?? 0
      plain[at] = filtered[row * (rowBytes + 1) + 1 + x]! + guess
    }
  }
  return plain
}

function paeth(left: number, up: number, upLeft: number): number {
  const [toLeft, toUp] = [Math.abs(up - upLeft), Math.abs(left - upLeft)]
  const toUpLeft = Math.abs(left + up - 2 * upLeft)
  if (toLeft <= toUp && toLeft <= toUpLeft) return left
  return toUp <= toUpLeft ? up : upLeft
}
