import { leakAssumptions } from '../../domain/answer-leak-convert.ts'
import { collectedBounds, type collectedFields } from '../../domain/parse-collected-request.ts'
import {
  leakConvertBounds,
  type leakConvertFields,
} from '../../domain/parse-leak-convert-request.ts'
import {
  storedEnergyBounds,
  type storedEnergyFields,
} from '../../domain/parse-stored-energy-request.ts'
import { collectedCautions } from '../../science/leak/collected-leak.ts'
import { leakUnits } from '../../science/units/leak-unit.ts'
import { answer, list, num, object, oneOf, text } from './json-schema.ts'

const numberOrNull = { type: ['number', 'null'] }
const reading = { timeS: num(collectedBounds.timeS), massG: num(collectedBounds.massG) }

/** What the calculators of leaks take, beside a pressure change. */
export const leakRequestSchemas = {
  apiCollectedRequest: object(
    {
      readings: list(object(reading, ['timeS', 'massG']), collectedBounds.readingCount),
      densityKgPerM3: num(collectedBounds.densityKgPerM3),
    } satisfies Record<(typeof collectedFields)[number], unknown>,
    ['readings', 'densityKgPerM3'],
  ),
  apiLeakConvertRequest: object(
    {
      value: num(leakConvertBounds.value),
      from: oneOf(leakUnits),
      to: oneOf(leakUnits),
      referenceTemperatureC: num(leakConvertBounds.temperatureC),
    } satisfies Record<(typeof leakConvertFields)[number], unknown>,
    ['value', 'from', 'to'],
  ),
  apiStoredEnergyRequest: object(
    {
      pressureKPaAbs: num(storedEnergyBounds.pressureKPaAbs),
      volumeL: num(storedEnergyBounds.volumeL),
      gamma: num(storedEnergyBounds.gamma),
      ambientKPaAbs: num(storedEnergyBounds.ambientKPaAbs),
    } satisfies Record<(typeof storedEnergyFields)[number], unknown>,
    ['pressureKPaAbs', 'volumeL'],
  ),
} as const

/** What they answer at least. */
export const leakResponseSchemas = {
  apiCollectedAnswer: answer({
    method: text,
    steadyGPerH: numberOrNull,
    steadyMlPerH: numberOrNull,
    confidence95GPerH: { type: ['array', 'null'], items: num(), minItems: 2, maxItems: 2 },
    runIn: {
      type: ['object', 'null'],
      properties: { timeConstantS: num(), extraG: num() },
      required: ['timeConstantS', 'extraG'],
    },
    steadyFromS: numberOrNull,
    setAside: list(object(reading)),
    cautions: list(oneOf(collectedCautions)),
  }),
  apiLeakConvertAnswer: answer({
    method: text,
    value: num(),
    unit: oneOf(leakUnits),
    referenceTemperatureC: num(),
    assumes: list(oneOf(leakAssumptions)),
    assumption: text,
  }),
  apiStoredEnergyAnswer: answer({ method: text, energyJ: num(), tntKg: num(), caution: text }),
} as const
