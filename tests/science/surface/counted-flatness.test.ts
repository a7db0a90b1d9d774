import { describe, expect, it } from 'vitest'
import { lamps } from '../../../src/science/optics/lamps.ts'
import { countedFlatness } from '../../../src/science/surface/counted-flatness.ts'
import {
  type FlatnessPattern,
  flatnessPatterns,
} from '../../../src/science/surface/flatness-pattern.ts'
import { readReference } from '../read-reference.ts'

const { wavelengthNm } = lamps.helium
const bands = (directionDeg: number, count: number) => ({ directionDeg, bands: count })
const { bowOverSpacing, nineHeliumBands } = readReference<{
  bowOverSpacing: { bowMm: number; spacingMm: number; bands: number; um: number; uin: number }
  nineHeliumBands: { exactUin: number; exactUm: number }
}>('optics/worked-bands.json')

const readable = flatnessPatterns.filter((pattern) => pattern !== 'unreadable')

describe('countedFlatness', () => {
  it('gives nine rings as the worked 2.644 um', () => {
    // US Army lesson MM0478 counts nine bands; exact helium value recomputed.
    const result = countedFlatness({ pattern: 'rings', readings: [bands(0, 9)], wavelengthNm })
    expect(result.flatnessUm).toBeCloseTo(nineHeliumBands.exactUm, 3) // printed to 0.001 um
    expect(result.flatnessUin).toBeCloseTo(nineHeliumBands.exactUin, 2) // printed to 0.01 uin
  })

  it('gives the worked bow over spacing', () => {
    const { bowMm, spacingMm } = bowOverSpacing
    const readings = [{ directionDeg: 0, bowMm, spacingMm }]
    const result = countedFlatness({ pattern: 'convex', readings, wavelengthNm })
    expect(result.bands).toBe(bowOverSpacing.bands)
    expect(result.flatnessUm).toBeCloseTo(bowOverSpacing.um, 4) // printed digits
  })

  it.each([
    ['straight', 0, 'flat'],
    ['convex', 2, 'convex'],
    ['concave', 2, 'concave'],
    ['cylinder', 2, 'cylinder'],
    ['saddle', 3.25, 'saddle'],
    ['rings', 2, 'undetermined'],
    ['s-shape', 2, 'twisted'],
    ['turned-edge', 2, 'edge'],
    ['local', 2, 'local'],
  ] as const)('reads %s with 1.25 and 2 bands as %d bands, form %s', (pattern, total, form) => {
    const readings = [bands(0, 1.25), bands(90, 2)]
    const result = countedFlatness({ pattern, readings, wavelengthNm })
    expect(result).toMatchObject({ bands: total, form, sees: 'taper' })
    expect(result.flatnessUm).toBe(total * result.bandHeightUm)
  })

  it.each(readable)('does not depend on the order of the readings of %s', (pattern) => {
    const readings = [bands(0, 1), bands(90, 2.5), bands(45, 0.5), bands(180, 1.5)]
    expect(countedFlatness({ pattern, readings, wavelengthNm })).toEqual(
      countedFlatness({ pattern, readings: [...readings].reverse(), wavelengthNm }),
    )
  })

  it.each(readable)('never lowers %s when a reading rises', (pattern) => {
    let before = -1
    for (const count of [0, 0.25, 1, 1.5, 3]) {
      const readings = [bands(0, 1), bands(90, count)]
      const { flatnessUm } = countedFlatness({ pattern, readings, wavelengthNm })
      expect(flatnessUm).toBeGreaterThanOrEqual(before)
      before = flatnessUm
    }
  })

  it('adds the peak and the valley of a saddle, as its surface has them', () => {
    // Second route: height in bands 1.5 x^2 - 0.75 y^2 on the unit disc, searched by brute force.
    let highest = 0
    let lowest = 0
    for (let turn = 0; turn < 360; turn++) {
      const angle = (turn * Math.PI) / 180
      const height = 1.5 * Math.cos(angle) ** 2 - 0.75 * Math.sin(angle) ** 2
      highest = Math.max(highest, height)
      lowest = Math.min(lowest, height)
    }
    const readings = [bands(0, 1.5), bands(90, 0.75)]
    // The extremes lie on the grid of whole degrees: rounding only.
    expect(countedFlatness({ pattern: 'saddle', readings, wavelengthNm }).bands).toBeCloseTo(
      highest - lowest,
      12,
    )
  })

  it('takes repeated readings along one direction once, 0 and 180 degrees being one', () => {
    const readings = [bands(0, 1), bands(180, 1.25), bands(90, 0.5)]
    expect(countedFlatness({ pattern: 'saddle', readings, wavelengthNm }).bands).toBe(1.75)
  })

  it('gives straight bands without any reading as zero', () => {
    expect(countedFlatness({ pattern: 'straight', readings: [], wavelengthNm }).flatnessUm).toBe(0)
  })

  it('signs rings only when the press test was made', () => {
    const readings = [bands(0, 2)]
    const form = (ringCentre: 'high' | 'low' | undefined) =>
      countedFlatness({ pattern: 'rings', readings, wavelengthNm, ringCentre }).form
    expect([form('high'), form('low'), form(undefined)]).toEqual([
      'convex',
      'concave',
      'undetermined',
    ])
    expect(
      countedFlatness({
        pattern: 'saddle',
        readings: [bands(0, 1), bands(90, 1)],
        wavelengthNm,
        ringCentre: 'high',
      }).form,
    ).toBe('saddle')
  })

  it('refuses the unreadable pattern, which is not a pass', () => {
    expect(() =>
      countedFlatness({ pattern: 'unreadable', readings: [bands(0, 1)], wavelengthNm }),
    ).toThrow(RangeError)
  })

  it.each([
    ['convex', []],
    ['saddle', []],
    ['saddle', [bands(0, 1)]],
    ['saddle', [bands(0, 1), bands(180, 1)]],
    ['convex', [bands(0, -1)]],
    ['convex', [bands(0, Number.NaN)]],
  ] as [FlatnessPattern, { directionDeg: number; bands: number }[]][])(
    'refuses %s with readings %o',
    (pattern, readings) => {
      expect(() => countedFlatness({ pattern, readings, wavelengthNm })).toThrow(RangeError)
    },
  )
})
