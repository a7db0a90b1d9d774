import { describe, expect, test } from 'vitest'
import { type Input, openFields } from '../../src/domain/fields.ts'
import {
  asPercent,
  parseStaticTestBudgetBody,
  parseStaticTestBudgetForm,
} from '../../src/domain/parse-static-test-budget.ts'
import { noStaticTestBudgetInput } from '../../src/domain/static-test.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const body = (input: Input) => {
  const fields = openFields(input)
  return fields.finish(parseStaticTestBudgetBody(fields, input))
}
const form = (input: Input) => {
  const fields = openFields(input)
  return fields.finish(parseStaticTestBudgetForm(fields))
}

describe('uncertainties that a program states', () => {
  test('are none where nothing is sent', () => {
    expect(accepted(body({}))).toEqual(noStaticTestBudgetInput)
    expect(accepted(body({ uncertainties: {} }))).toEqual(noStaticTestBudgetInput)
  })

  test('are those of the calculator', () => {
    const stated = { volumeRelative: 0.02, pressurePa: 30, temperatureK: 0.05, timeS: 0.5 }
    expect(accepted(body({ uncertainties: stated }))).toEqual(stated)
    const stepped = { ...stated, resolutionPa: 100, resolutionK: 0.1 }
    expect(accepted(body({ uncertainties: stepped }))).toEqual(stepped)
  })

  test('are refused by their paths', () => {
    const faulty = {
      volumeRelative: 1.1,
      pressurePa: -1,
      temperatureK: 'warm',
      seconds: 1,
      resolutionPa: -1,
    }
    expect(faultsOf(body({ uncertainties: faulty }))).toEqual([
      'uncertainties.seconds unknown-field',
      'uncertainties.volumeRelative above',
      'uncertainties.pressurePa below',
      'uncertainties.temperatureK not-a-number',
      'uncertainties.resolutionPa below',
    ])
    expect(faultsOf(body({ uncertainties: 'none' }))).toEqual(['uncertainties not-an-object'])
  })
})

describe('uncertainties that a person enters', () => {
  test('have the volume in percent, and what stays empty is not stated', () => {
    const entered = { volumeUncertaintyPercent: '2,5', timeUncertaintyS: '1' }
    expect(accepted(form(entered))).toEqual({
      ...noStaticTestBudgetInput,
      volumeRelative: 0.025,
      timeS: 1,
    })
  })

  test('are refused beside their fields', () => {
    const faulty = {
      volumeUncertaintyPercent: '101',
      pressureUncertaintyPa: '-3',
      temperatureUncertaintyK: 'x',
      timeUncertaintyS: '1e3',
    }
    expect(faultsOf(form(faulty))).toEqual([
      'volumeUncertaintyPercent above',
      'pressureUncertaintyPa below',
      'temperatureUncertaintyK not-a-number',
      'timeUncertaintyS not-a-number',
    ])
  })

  test('come back as they were entered', () => {
    expect([0.07, 0.025, 0.29].map(asPercent)).toEqual([7, 2.5, 29])
  })
})
