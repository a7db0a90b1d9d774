import { describe, expect, it } from 'vitest'
import { type FitFigures, judgeReading } from '../../../src/science/photo/judge-reading.ts'

const good: FitFigures = {
  lightSwing: 0.5,
  swing: 0.5,
  colourAgreement: 0.99,
  hiddenArcDeg: 10,
  edgeWidth: 0.03,
  isAnEdgeFollowed: true,
  spread: 0.02,
  explained: 0.99,
  usableShare: 1,
  explainedShare: 1,
  edgeShare: 1,
  doubtfulInRow: 0,
  tiltBands: 8,
  pixelsPerBand: 40,
  flatnessBands: 1,
  expandedUncertaintyBands: 0.1,
  rivals: [],
}

describe('judgeReading', () => {
  it('lets a good fit pass', () => {
    expect(judgeReading(good)).toBeNull()
  })

  it.each<[string, Partial<FitFigures>]>([
    ['no-clear-bands', { swing: 0.044, spread: 0.001 }],
    ['no-clear-bands', { lightSwing: 0.02, tiltBands: 1 }],
    ['no-clear-bands', { swing: 1.6 }],
    ['no-clear-bands', { spread: 0.2, lightSwing: 0.1 }],
    ['model-does-not-fit', { spread: 0.2, tiltBands: 1 }],
    ['lamp-of-many-colours', { colourAgreement: 0.49, tiltBands: 1 }],
    ['face-partly-hidden', { hiddenArcDeg: 90 }],
    ['face-partly-hidden', { hiddenArcDeg: 90, tiltBands: 1, explainedShare: 0.9 }],
    ['too-few-bands', { hiddenArcDeg: 90, tiltBands: 1 }],
    ['too-few-bands', { tiltBands: 4.4 }],
    ['bands-too-fine', { pixelsPerBand: 4.9 }],
    ['face-partly-hidden', { usableShare: 0.84 }],
    ['model-does-not-fit', { explained: 0.97 }],
    ['model-does-not-fit', { explainedShare: 0.94 }],
    ['model-does-not-fit', { edgeShare: 0.89 }],
    ['model-does-not-fit', { doubtfulInRow: 3 }],
    ['noisy', { spread: 0.085 }],
    ['ambiguous', { rivals: [{ flatnessBands: 1.2, spread: 0.04 }] }],
    ['uncertainty-too-large', { expandedUncertaintyBands: 0.31 }],
  ])('refuses as %s: %o', (reason, change) => {
    expect(judgeReading({ ...good, ...change })?.reason).toBe(reason)
  })

  it('lets a chip be, that two sectors side by side can hold', () => {
    expect(judgeReading({ ...good, doubtfulInRow: 2 })).toBeNull()
  })

  it('lets rivals be that give the same figure, or explain the land worse', () => {
    expect(judgeReading({ ...good, rivals: [{ flatnessBands: 1.05, spread: 0.02 }] })).toBeNull()
    expect(judgeReading({ ...good, rivals: [{ flatnessBands: 2, spread: 0.06 }] })).toBeNull()
  })

  it('names the cause, not what follows from it', () => {
    const nothing = { ...good, swing: 0.01, spread: 0.01, explained: 0.1, tiltBands: 1 }
    expect(judgeReading(nothing)?.reason).toBe('no-clear-bands')
    const few = { ...good, tiltBands: 2, explained: 0.9, expandedUncertaintyBands: 2 }
    expect(judgeReading(few)?.reason).toBe('too-few-bands')
  })

  it('asks the fit before it takes a part for hidden where both edges may be wrong', () => {
    const lost = { ...good, isAnEdgeFollowed: false }
    expect(judgeReading(lost)).toBeNull()
    for (const hidden of [{ hiddenArcDeg: 190 }, { usableShare: 0.8 }]) {
      const both = { ...lost, ...hidden, explainedShare: 0.8 }
      expect(judgeReading(both)?.reason).toBe('model-does-not-fit')
      expect(judgeReading({ ...lost, ...hidden })?.reason).toBe('face-partly-hidden')
    }
  })

  it('names what is not sharp, but refuses nothing for it alone', () => {
    const blurred = { ...good, edgeWidth: 0.1 }
    expect(judgeReading(blurred)).toBeNull()
    for (const change of [{ swing: 0.01 }, { tiltBands: 1 }, { explained: 0.9 }]) {
      const refusal = judgeReading({ ...blurred, ...change })
      expect(refusal).toMatchObject({ reason: 'noisy', measured: 0.1 })
      expect(judgeReading({ ...good, ...change })?.reason).not.toBe('noisy')
    }
    expect(judgeReading({ ...blurred, colourAgreement: 0 })?.reason).toBe('lamp-of-many-colours')
    expect(judgeReading({ ...blurred, hiddenArcDeg: 120 })?.reason).toBe('face-partly-hidden')
  })

  it('allows 0.15 band of uncertainty where the face is nearly flat', () => {
    const flat = { ...good, flatnessBands: 0.1 }
    expect(judgeReading({ ...flat, expandedUncertaintyBands: 0.15 })).toBeNull()
    expect(judgeReading({ ...flat, expandedUncertaintyBands: 0.16 })?.measured).toBe(0.16)
  })
})
