import { describe, expect, it } from 'vitest'
import { alignment } from '../../../src/domain/alignment.ts'
import { alignmentTexts } from '../../../views/words/en/alignment-texts.ts'
import { surveyTexts } from '../../../views/words/en/survey-texts.ts'

/** What 290 px hold of letters of 13 px. */
const mostLetters = 44

describe('the texts in drawings of surveys', () => {
  it('fit beside their signs on a phone, also with large figures', () => {
    const { timesLarger, turn, closing, joined, fitted, highest, limit, minimumZone } = surveyTexts
    const lines = [
      `${surveyTexts.scale(5000)}, ${timesLarger(12_345)}`,
      ...[0, 4].map(turn),
      closing,
      joined,
      fitted(1234.5, true),
      fitted(1234.5, false),
      highest(359),
      limit(1234.5),
      minimumZone(1234.5),
    ]
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(mostLetters)
  })

  it('fit in the combined picture too', () => {
    const survey = {
      measuredValueId: 1,
      surface: 'face',
      isClockwise: true,
      totalUm: 4000,
      eccentricityUm: 1234,
      directionDeg: 359,
      roundnessUm: 3,
      sweptDiameterMm: 1200,
    } as const
    const texts = alignmentTexts(
      alignment(
        (
          [
            'shaft-run-out',
            'sleeve-run-out',
            'register-concentricity',
            'chamber-face-squareness',
            'seat-face-squareness',
          ] as const
        ).map((characteristic) => ({ ...survey, characteristic })),
      ),
    )
    const lines = Object.values(texts).filter((one) => typeof one === 'string')
    expect(lines.length).toBeGreaterThan(10)
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(mostLetters)
  })

  it('round times to two digits and turns to a whole circle', () => {
    expect(surveyTexts.timesLarger(11_364)).toBe('drawn 11000 times larger')
    expect(surveyTexts.angle(22.5)).toBe('22.5°')
  })
})
