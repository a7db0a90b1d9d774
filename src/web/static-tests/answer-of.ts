import type { StaticTestAnswer } from '../../../views/static-tests/answer.tsx'
import { computeStaticTest } from '../../domain/compute-static-test.ts'
import { isConfirmed } from '../../domain/confirmed.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import { instrumentUse } from '../../domain/instrument-use.ts'
import { judgeStaticTest } from '../../domain/judge-static-test.ts'
import { parseStaticTestFigures } from '../../domain/parse-static-test-figures.ts'
import { throughputUnits } from '../../science/units/throughput-units.ts'
import { typedText } from '../typed-text.ts'
import type { StaticTestDesk } from './desk.ts'

/** What can be said of a test of which perhaps not all is entered yet. */
export function answerOf(input: Input, desk: StaticTestDesk): StaticTestAnswer {
  const chosen = [input.gaugeInstrumentId, input.thermometerInstrumentId].map(typedText)
  const day = typedText(input.startedAt).slice(0, 10) || desk.now.slice(0, 10)
  const uses = desk.instruments
    .filter((one) => chosen.includes(String(one.id)))
    .map((one) => instrumentUse(one, day))
  return { uses, outcome: outcomeOf(input, desk) }
}

function outcomeOf(input: Input, desk: StaticTestDesk): StaticTestAnswer['outcome'] {
  const fields = openFields(input, isConfirmed(input))
  const parsed = fields.finish(parseStaticTestFigures(fields))
  if (!parsed.ok) {
    // What is still empty is no mistake yet: it is asked for.
    const faults = parsed.faults.filter((one) => one.kind !== 'empty')
    return faults.length > 0 ? { kind: 'faulty', faults } : { kind: 'ask' }
  }
  const test = parsed.value
  const computed = computeStaticTest(test)
  const { leakPaM3PerS, uncompensatedPaM3PerS } = computed
  const { referenceTemperatureC, startPressureKPaAbs, endPressureKPaAbs } = test
  return {
    kind: 'figures',
    leakPaM3PerS,
    leakMbarLPerS: throughputUnits({ leakPaM3PerS, referenceTemperatureC }).leakMbarLPerS,
    uncompensatedPaM3PerS,
    isTemperatureChanged: test.startTemperatureC !== test.endTemperatureC,
    startPressureKPaAbs,
    endPressureKPaAbs,
    judged: judgeStaticTest({ ...test, ...computed }, desk.limitSet),
  }
}
