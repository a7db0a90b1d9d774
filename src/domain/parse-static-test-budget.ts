import type { Fields, Input } from './fields.ts'
import { noStaticTestBudgetInput, type StaticTestBudgetInput } from './static-test.ts'

export const staticTestBudgetFormFields = [
  'volumeUncertaintyPercent',
  'pressureUncertaintyPa',
  'temperatureUncertaintyK',
  'timeUncertaintyS',
] as const

/** Standard uncertainties; as wide as the calculator takes them. */
export const staticTestBudgetBounds = {
  volumeRelative: { min: 0, max: 1 },
  volumePercent: { min: 0, max: 100 },
  pressurePa: { min: 0, max: 1e9 },
  temperatureK: { min: 0, max: 1000 },
  timeS: { min: 0, max: 1e9 },
} as const

/** What a program states: `uncertainties`, as the calculator takes them. */
export function parseStaticTestBudgetBody(fields: Fields, input: Input): StaticTestBudgetInput {
  if (input.uncertainties === undefined || input.uncertainties === null) {
    return noStaticTestBudgetInput
  }
  const part = fields.group('uncertainties')
  const { volumeRelative, pressurePa, temperatureK, timeS } = staticTestBudgetBounds
  part.only('volumeRelative', 'pressurePa', 'resolutionPa', 'temperatureK', 'resolutionK', 'timeS')
  const stated = {
    volumeRelative: part.optionalDecimal('volumeRelative', volumeRelative),
    pressurePa: part.optionalDecimal('pressurePa', pressurePa),
    temperatureK: part.optionalDecimal('temperatureK', temperatureK),
    timeS: part.optionalDecimal('timeS', timeS),
  }
  const resolutionPa = part.optionalDecimal('resolutionPa', pressurePa)
  const resolutionK = part.optionalDecimal('resolutionK', temperatureK)
  return {
    ...stated,
    ...(resolutionPa === null ? {} : { resolutionPa }),
    ...(resolutionK === null ? {} : { resolutionK }),
  }
}

/** A share as percent, so that 0.07 comes back as 7 and not as 7.000000000000001. */
export function asPercent(share: number): number {
  return Number((share * 100).toPrecision(12))
}

/** What a person enters: the volume in percent, as people say it. */
export function parseStaticTestBudgetForm(fields: Fields): StaticTestBudgetInput {
  const { volumePercent, pressurePa, temperatureK, timeS } = staticTestBudgetBounds
  const percent = fields.optionalDecimal('volumeUncertaintyPercent', volumePercent)
  return {
    volumeRelative: percent === null ? null : percent / 100,
    pressurePa: fields.optionalDecimal('pressureUncertaintyPa', pressurePa),
    temperatureK: fields.optionalDecimal('temperatureUncertaintyK', temperatureK),
    timeS: fields.optionalDecimal('timeUncertaintyS', timeS),
  }
}
