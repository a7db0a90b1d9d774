import { describe, expect, it } from 'vitest'
import { type DialGaugeOptions, dialGauge } from '../../src/plots/dial-gauge.ts'
import { coordinates } from './path-points.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const options: DialGaugeOptions = {
  sizePx: 300,
  graduationCount: 100,
  numberedEvery: 10,
  needle: 25,
  numberText: String,
  unitText: '0.01 mm',
}
const tip = (of: DialGaugeOptions) =>
  coordinates(pathsOf(dialGauge(of).drawing, 'needle')[0]?.d ?? '').slice(0, 2)

describe('dialGauge', () => {
  it('keeps on its canvas at any size and scale', () => {
    for (const sizePx of [200, 300, 900]) {
      for (const graduationCount of [20, 80, 100, 200]) {
        expectOnCanvas(dialGauge({ ...options, sizePx, graduationCount }).drawing)
      }
    }
  })

  it('draws every graduation once', () => {
    const { drawing } = dialGauge(options)
    const count = (part: string) => (pathsOf(drawing, part)[0]?.d.match(/M/g) ?? []).length
    expect(count('numbered')).toBe(10)
    expect(count('fifths')).toBe(10)
    expect(count('graduations')).toBe(80)
  })

  it('numbers from 0 on top, plus to the right and minus to the left', () => {
    const texts = textsOf(dialGauge(options).drawing)
    expect(texts).toEqual([
      '0',
      '10',
      '20',
      '30',
      '40',
      '50',
      '-40',
      '-30',
      '-20',
      '-10',
      '0.01 mm',
    ])
  })

  it('turns the needle a quarter for a quarter of the scale, either way', () => {
    const [x, y] = tip(options)
    expect(x).toBeGreaterThan(250)
    expect(y).toBeCloseTo(150, 1) // rounded to a hundredth of a pixel
    const [left] = tip({ ...options, needle: -25 })
    expect(left).toBeLessThan(50)
  })

  it('tells a script what it needs to read a tap: the formula gives back the needle', () => {
    for (const needle of [-40, -7, 0, 13, 49]) {
      const { geometry } = dialGauge({ ...options, needle })
      const [x = 0, y = 0] = tip({ ...options, needle })
      const { centre, graduationCount } = geometry
      const turns = Math.atan2(x - centre.x, centre.y - y) / (2 * Math.PI)
      // A hundredth of a pixel at 133 px is less than a thousandth of a graduation.
      expect(turns * graduationCount).toBeCloseTo(needle, 2)
    }
  })

  it('shows no needle before there is a reading', () => {
    expect(pathsOf(dialGauge({ ...options, needle: null }).drawing, 'needle')).toEqual([])
  })

  it('refuses a size or a scale out of range', () => {
    expect(() => dialGauge({ ...options, sizePx: 100 })).toThrow(RangeError)
    expect(() => dialGauge({ ...options, graduationCount: 10 })).toThrow(RangeError)
    expect(() => dialGauge({ ...options, graduationCount: 50.5 })).toThrow(RangeError)
  })
})
