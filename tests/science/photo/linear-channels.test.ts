import { describe, expect, it } from 'vitest'
import { linearChannels } from '../../../src/science/photo/linear-channels.ts'

const one = (byte: number) =>
  linearChannels({ data: new Uint8Array([byte, byte, byte]), width: 1, height: 1 }).channels[0][0]

describe('linearChannels', () => {
  it('gives the published values of the curve', () => {
    // IEC 61966-2-1 as tables print it: half grey 188 is 0.5029, 119 is 0.1845, 10 is 0.003035.
    expect(one(188)).toBeCloseTo(0.5029, 4) // printed to four decimals
    expect(one(119)).toBeCloseTo(0.1845, 4)
    expect(one(10)).toBeCloseTo(0.003035, 6)
    expect(one(0)).toBe(0)
    expect(one(255)).toBe(1)
  })

  it('rises from byte to byte, also where its two pieces meet', () => {
    for (let byte = 1; byte < 256; byte++) expect(one(byte)).toBeGreaterThan(one(byte - 1) ?? 1)
  })

  it('takes the colours apart and keeps the rows', () => {
    const data = new Uint8Array([255, 0, 0, 0, 255, 0, 0, 0, 255, 255, 255, 255])
    const { channels } = linearChannels({ data, width: 2, height: 2 })
    expect(channels.map((channel) => [...channel])).toEqual([
      [1, 0, 0, 1],
      [0, 1, 0, 1],
      [0, 0, 1, 1],
    ])
  })

  it('refuses data that are not of the size', () => {
    const data = new Uint8Array(11)
    expect(() => linearChannels({ data, width: 2, height: 2 })).toThrow('data length')
    expect(() => linearChannels({ data, width: 0, height: 2 })).toThrow('width')
    expect(() => linearChannels({ data, width: 2, height: 1.5 })).toThrow('height')
  })
})
