import { describe, expect, it } from 'vitest'
import { drawnSurvey } from '../../src/domain/drawn-survey.ts'
import { addDial, addSurvey } from '../support/add-survey.ts'
import { buildShop } from '../support/build-shop.ts'

function recorded() {
  const shop = buildShop()
  return addSurvey(shop, addDial(shop), { characteristic: 'shaft-run-out' })
}

describe('drawnSurvey', () => {
  it('draws a spot that was read twice once, by its later reading', () => {
    const { survey, result } = recorded()
    const [first] = survey.readings
    const again = { ...first!, id: 99, um: 33, typed: '33' }
    const [plane] = drawnSurvey({ ...survey, readings: [...survey.readings, again] }, result)
    expect(plane?.turns[0]).toHaveLength(8)
    const mean = (33 + survey.readings.slice(1).reduce((sum, one) => sum + one.um, 0)) / 8
    // A turn is drawn about its own mean; rounding of a sum.
    expect(plane?.turns[0]?.[0]?.valueUm).toBeCloseTo(33 - mean, 9)
  })

  it('draws each turn as its figures were computed: a lever is reduced by its cosine', () => {
    const { survey, result } = recorded()
    const setUp = { ...survey.setUp, leverAngleDeg: 60 }
    const [plane] = drawnSurvey({ ...survey, setUp }, result)
    const typed = survey.readings.map((one) => one.um / 2)
    // cos 60 degrees is a half to within rounding.
    plane?.turns[0]?.forEach(({ valueUm }, i) => {
      expect(valueUm).toBeCloseTo(typed[i]!, 9)
    })
    expect(plane?.turns[0]).toHaveLength(8)
  })

  it('has nothing to draw of a float', () => {
    const { survey, result } = recorded()
    expect(drawnSurvey({ ...survey, characteristic: 'end-play' }, result)).toEqual([])
  })

  it('refuses a survey with a spot that was never read', () => {
    const { survey, result } = recorded()
    expect(() => drawnSurvey({ ...survey, readings: survey.readings.slice(1) }, result)).toThrow(
      RangeError,
    )
  })
})
