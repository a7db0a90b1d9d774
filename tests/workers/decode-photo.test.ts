import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { decodePhoto } from '../../src/workers/decode-photo.ts'

/** Left half red, right half blue, a green row on top. */
function flag(width: number, height: number) {
  const data = new Uint8Array(3 * width * height)
  for (let i = 0; i < width * height; i++) {
    const isTop = i < width
    const isLeft = i % width < width / 2
    data[3 * i + (isTop ? 1 : isLeft ? 0 : 2)] = 255
  }
  return sharp(data, { raw: { width, height, channels: 3 } })
}

const decoded = async (bytes: Uint8Array, mostScale?: number) => {
  const answer = await decodePhoto(bytes, mostScale)
  if ('fault' in answer) throw new Error(answer.fault)
  return answer
}

describe('decodePhoto', () => {
  it.each(['png', 'webp'] as const)('reads %s as red, green and blue bytes', async (kind) => {
    const bytes = await flag(6, 4).toFormat(kind, { lossless: true }).toBuffer()
    const { picture, scale } = await decoded(bytes)
    expect(scale).toBe(1)
    expect([picture.width, picture.height, picture.data.length]).toEqual([6, 4, 72])
    expect([...picture.data.slice(0, 3)]).toEqual([0, 255, 0])
    expect([...picture.data.slice(18, 21)]).toEqual([255, 0, 0])
    expect([...picture.data.slice(33, 36)]).toEqual([0, 0, 255])
  })

  it('reads a photograph as the camera was held', async () => {
    // Orientation 6: the camera was turned, the top of the scene is the right side of the file.
    const bytes = await flag(64, 32).withMetadata({ orientation: 6 }).jpeg().toBuffer()
    const { picture, width, height } = await decoded(bytes)
    expect([width, height]).toEqual([32, 64])
    expect([picture.width, picture.height]).toEqual([32, 64])
    const red = picture.data[3 * (10 * 32 + 16)] ?? 0
    const blue = picture.data[3 * (54 * 32 + 16) + 2] ?? 0
    // JPEG keeps full colours to a few of 255.
    expect(Math.min(red, blue)).toBeGreaterThan(230)
  })

  it('makes a photograph smaller than asked for, and a huge one in any case', async () => {
    const bytes = await flag(600, 400).jpeg().toBuffer()
    const half = await decoded(bytes, 0.5)
    expect([half.picture.width, half.picture.height, half.scale]).toEqual([300, 200, 0.5])
    expect([half.width, half.height]).toEqual([600, 400])
    const large = await decoded(await flag(4000, 3000).jpeg().toBuffer())
    expect(large.picture.width * large.picture.height).toBeLessThan(3_210_000)
    expect(large.scale).toBeCloseTo(large.picture.width / 4000, 3) // rounded to whole pixels
  })

  it('turns grey and see-through pictures into red, green and blue', async () => {
    const grey = await flag(8, 8).greyscale().png().toBuffer()
    expect((await decoded(grey)).picture.data).toHaveLength(192)
    const clear = await flag(8, 8).ensureAlpha(0.5).png().toBuffer()
    expect((await decoded(clear)).picture.data).toHaveLength(192)
  })

  it('knows a HEIC by its first bytes, whatever it is called', async () => {
    const bytes = new TextEncoder().encode('\0\0\0\x18ftypheic\0\0\0\0mif1heic')
    expect(await decodePhoto(bytes)).toEqual({ fault: 'heic' })
  })

  it.each([
    ['nothing', new Uint8Array(0)],
    ['text', new TextEncoder().encode('a picture, honestly')],
    [
      'a drawing with commands',
      new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>'),
    ],
    ['a GIF', new TextEncoder().encode('GIF89a\x01\0\x01\0')],
    ['a TIFF', new Uint8Array([0x49, 0x49, 0x2a, 0, 8, 0, 0, 0])],
    ['a PDF', new TextEncoder().encode('%PDF-1.7')],
  ])('takes %s for no photograph and never decodes it', async (_, bytes) => {
    expect(await decodePhoto(bytes)).toEqual({ fault: 'not-a-photo' })
  })

  it('says that a photograph is cut off, at every length, and never throws', async () => {
    const whole = readFileSync(new URL('../../fixtures/files/bands/cone.jpg', import.meta.url))
    for (const share of [0.001, 0.01, 0.1, 0.5, 0.9]) {
      const part = whole.subarray(0, Math.floor(whole.length * share))
      expect(await decodePhoto(part)).toEqual({ fault: 'damaged' })
    }
    const noise = Uint8Array.from({ length: 5000 }, (_, i) => (i * i * 31 + (i % 7) * 101) & 0xff)
    for (const head of [
      [0xff, 0xd8, 0xff],
      [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
    ]) {
      expect(await decodePhoto(Uint8Array.from([...head, ...noise]))).toEqual({ fault: 'damaged' })
    }
  })

  it('refuses more pixels than 50 million by the head of the file, before they take memory', async () => {
    const huge = await sharp({
      create: { width: 8000, height: 7000, channels: 3, background: '#123' },
    })
      .png({ compressionLevel: 9 })
      .toBuffer()
    expect(huge.length).toBeLessThan(1_000_000)
    expect(await decodePhoto(huge)).toEqual({ fault: 'too-many-pixels' })
  })
})
