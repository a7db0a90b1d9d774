import { confirmField, isConfirmed } from './confirmed.ts'
import { expansionFields } from './expansion-fields.ts'
import { type Input, openFields } from './fields.ts'
import { correctionFields } from './parse-correction.ts'
import {
  parseStaticTestBudgetForm,
  staticTestBudgetFormFields,
} from './parse-static-test-budget.ts'
import { parseStartedAt, parseStaticTestCommon } from './parse-static-test-common.ts'
import { parseStaticTestFigures } from './parse-static-test-figures.ts'
import type { Parsed } from './parsed.ts'
import { refuseVolumeInstrument } from './refuse-volume-instrument.ts'
import { leakPlaces, type NewStaticTest, staticTestBounds, testSections } from './static-test.ts'
import type { StaticTestContext } from './static-test-context.ts'

export const staticTestFormFields = [
  'section',
  'startPressure',
  'endPressure',
  'pressureUnit',
  'pressureReference',
  'barometerKPa',
  'startTemperatureC',
  'endTemperatureC',
  'startedAt',
  'durationMin',
  'durationS',
  'volumeL',
  'stabilisationS',
  ...expansionFields,
  'leakPlace',
  'gaugeInstrumentId',
  'thermometerInstrumentId',
  'volumeInstrumentId',
  ...staticTestBudgetFormFields,
  'note',
  ...correctionFields,
  confirmField,
] as const

/**
 * Reads a static test as the technician enters it: pressures in the gauge's own unit, kept as
 * typed beside the absolute pressures they mean. A pressure that rose is a result like another.
 */
export function parseStaticTestForm(
  input: Input,
  context: StaticTestContext,
): Parsed<Omit<NewStaticTest, 'workOrderId'>> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...staticTestFormFields)
  const section = fields.choice('section', testSections)
  const figures = parseStaticTestFigures(fields)
  refuseVolumeInstrument(fields, figures.expansion)
  const shown = fields.faults.length === 0 ? figures : null
  const startedAt = parseStartedAt(fields, context, figures.durationS)
  return fields.finish({
    section,
    ...figures,
    startedAt,
    stabilisationS: fields.optionalDecimal('stabilisationS', staticTestBounds.stabilisationS),
    leakPlace: fields.optionalChoice('leakPlace', leakPlaces),
    budgetInput: parseStaticTestBudgetForm(fields),
    ...parseStaticTestCommon(fields, context, startedAt, shown),
  })
}
