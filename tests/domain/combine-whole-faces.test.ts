import { describe, expect, it } from 'vitest'
import { combineWholeFaces } from '../../src/domain/combine-whole-faces.ts'
import { laySurface } from '../../src/domain/lay-surface.ts'
import { pictureSources } from '../../src/domain/picture-sources.ts'
import { pictureUncertaintyUm } from '../../src/domain/picture-uncertainty-um.ts'
import { turnSurface } from '../../src/science/surface/turn-surface.ts'
import { dish, madeSurface, madeWholeReading } from './made-whole-reading.ts'

const face = madeSurface(2)
const first = madeWholeReading(1, face)
const contributionOf = (
  { uncertainty }: Pick<typeof first, 'uncertainty'>,
  source: string,
): number => uncertainty!.budget.find((one) => one.source === source)?.contribution ?? Number.NaN

describe('a reading combined with itself', () => {
  const { computed, wholeFace, disagreementRatio } = combineWholeFaces([first, first])

  it('changes no figure', () => {
    // All by rounding: the turn is found by a parabola, and its top is 0 degrees but for 1e-12.
    expect(disagreementRatio).toBeCloseTo(0, 9)
    expect(computed.flatnessUm).toBeCloseTo(first.flatnessUm!, 12)
    expect(computed.bands).toBeCloseTo(first.bands!, 12)
    expect(computed.form).toBe(first.form)
    for (const name of ['minimumZoneUm', 'rmsUm', 'taperUm'] as const) {
      expect(wholeFace[name]).toBeCloseTo(first.wholeFace[name]!, 12)
    }
    wholeFace.lobes.forEach((lobe, i) => {
      expect(lobe.amplitudeUm).toBeCloseTo(first.wholeFace.lobes[i]!.amplitudeUm, 12)
    })
    wholeFace.surface?.coefficients.forEach((one, k) => {
      expect(one).toBeCloseTo(face.coefficients[k] as number, 12)
    })
  })

  it('knows no more than it did: one photograph is no second one', () => {
    const { expandedUncertainty, leftOut } = computed.uncertainty!
    expect(expandedUncertainty).toBeCloseTo(first.uncertainty!.expandedUncertainty, 12)
    expect(leftOut).toEqual(first.uncertainty?.leftOut)
  })
})

describe('two photographs of one face', () => {
  const second = madeWholeReading(2, turnSurface(face, 100))
  const { computed, wholeFace, turns } = combineWholeFaces([first, second])

  it('lie on each other and give the same face', () => {
    expect(turns[1]?.standing).toBe('found')
    expect(turns[1]?.turnDeg).toBeCloseTo(260, 1) // the parabola over three degrees
    expect(computed.flatnessUm! / first.flatnessUm!).toBeCloseTo(1, 3) // such a turn
    expect(wholeFace.source).toMatchObject({
      kind: 'combined',
      parts: [
        { readingId: 1, turnDeg: 0, isUpsideDown: false },
        { readingId: 2, isUpsideDown: false },
      ],
    })
  })

  it('average what each photograph draws anew, and nothing that both share', () => {
    for (const source of ['photo-statistical', 'photo-perspective', 'photo-view']) {
      const each = [contributionOf(first, source), contributionOf(second, source)]
      const got = contributionOf(computed, source)
      // Weights differ a little from a half, since the turned peak is met a little otherwise.
      expect(got / (Math.hypot(...each) / 2)).toBeCloseTo(1, 3)
    }
    for (const source of [
      'photo-form',
      'photo-edge',
      'photo-floor',
      'optical-flat',
      'wavelength',
    ]) {
      const each = (contributionOf(first, source) + contributionOf(second, source)) / 2
      expect(contributionOf(computed, source) / each).toBeCloseTo(1, 3) // as above
    }
    expect(computed.uncertainty!.expandedUncertainty).toBeLessThan(
      first.uncertainty!.expandedUncertainty,
    )
  })

  it('give the same in either order, bit for bit', () => {
    expect(combineWholeFaces([second, first])).toEqual(combineWholeFaces([first, second]))
  })

  it('are recomputed from what was stored as JSON, bit for bit', () => {
    const kept = JSON.parse(JSON.stringify([first, second])) as (typeof first)[]
    expect(JSON.stringify(combineWholeFaces(kept))).toBe(
      JSON.stringify(combineWholeFaces([first, second])),
    )
  })

  it('count by 1 / u^2 of what each picture leaves open', () => {
    const worse = madeWholeReading(3, face, { statisticalBands: 0.3 })
    const { wholeFace: got } = combineWholeFaces([first, worse])
    const parts = got.source.kind === 'combined' ? got.source.parts : []
    const squares = [first, worse].map((one) => pictureUncertaintyUm(one.uncertainty!.budget) ** -2)
    expect(parts[0]!.weight / parts[1]!.weight).toBeCloseTo(squares[0]! / squares[1]!, 9)
    expect(parts.reduce((sum, one) => sum + one.weight, 0)).toBeCloseTo(1, 12)
  })
})

describe('readings that differ', () => {
  const moved = (share: number) => ({
    ...face,
    coefficients: face.coefficients.map((one) => one * share),
  })

  it('enlarge the uncertainty where they differ more than expected', () => {
    const expected = combineWholeFaces([first, madeWholeReading(2, moved(1.01))])
    expect(expected.disagreementRatio).toBeLessThan(1)
    expect(contributionOf(expected.computed, 'disagreement')).toBeNaN()
    const more = combineWholeFaces([first, madeWholeReading(2, moved(1.5))])
    expect(more.disagreementRatio).toBeGreaterThan(1)
    const { computed, disagreementRatio } = more
    // The ratio was taken over all that comes from the pictures.
    const known = computed.uncertainty?.budget.map((one) => one.source) ?? []
    const ofPictures = pictureSources.filter((one) => known.includes(one))
    expect(ofPictures.length).toBeGreaterThan(3)
    const without = Math.hypot(...ofPictures.map((one) => contributionOf(computed, one)))
    const all = Math.hypot(without, contributionOf(computed, 'disagreement'))
    expect(all / without).toBeCloseTo(disagreementRatio, 9)
  })

  it('differ too where their flatness is the same, but not their form', () => {
    const other = { ...dish, coefficients: dish.coefficients.map((one) => 0 - one) }
    const twin = madeWholeReading(2, other)
    const one = madeWholeReading(1, dish)
    expect(twin.flatnessUm).toBeCloseTo(one.flatnessUm!, 12)
    expect(combineWholeFaces([one, twin]).disagreementRatio).toBeGreaterThan(1)
  })
})

describe('a sign that one of them knows', () => {
  const open = madeWholeReading(1, laySurface(face, { turnDeg: 0, isUpsideDown: true }), {
    isSignKnown: false,
  })
  const known = madeWholeReading(2, face)

  it('is the sign of the combination, and that one lies as it was taken', () => {
    const { wholeFace } = combineWholeFaces([open, known])
    expect(wholeFace.isSignKnown).toBe(true)
    expect(wholeFace.source).toMatchObject({
      parts: [
        { readingId: 2, isUpsideDown: false },
        { readingId: 1, isUpsideDown: true },
      ],
    })
    expect(wholeFace.taperUm).toBeCloseTo(known.wholeFace.taperUm!, 4) // the turn, as above
  })

  it('stays open where neither knows', () => {
    const both = combineWholeFaces([open, { ...open, id: 3 }])
    expect(both.wholeFace).toMatchObject({ isSignKnown: false, taperUm: null })
  })
})

describe('what has no mean', () => {
  it('is one reading alone, or a grid of lines', () => {
    expect(() => combineWholeFaces([first])).toThrow(RangeError)
    const grid = { ...first, id: 2, wholeFace: { ...first.wholeFace, surface: null } }
    expect(() => combineWholeFaces([first, grid])).toThrow(RangeError)
  })
})
