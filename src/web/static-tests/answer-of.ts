import type { StaticTestAnswer } from '../../../views/static-tests/answer.tsx'
import { carriedStaticTestBudget } from '../../domain/carried-static-test-budget.ts'
import { computeStaticTest } from '../../domain/compute-static-test.ts'
import { isConfirmed } from '../../domain/confirmed.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import { judgeStaticTest } from '../../domain/judge-static-test.ts'
import { parseStaticTestBudgetForm } from '../../domain/parse-static-test-budget.ts'
import { parseStaticTestFigures } from '../../domain/parse-static-test-figures.ts'
import { smallestSeenLeak } from '../../domain/smallest-seen-leak.ts'
import type { StaticTest } from '../../domain/static-test.ts'
import { staticTestAccuracy } from '../../domain/static-test-accuracy.ts'
import { useOf } from '../../domain/use-of.ts'
import { throughputUnits } from '../../science/units/throughput-units.ts'
import { chosenInstrument } from './chosen-instrument.ts'
import { dayOf } from './day-of.ts'
import type { StaticTestDesk } from './desk.ts'
import { instrumentFields } from './instrument-fields.ts'
import { planOf } from './plan-of.ts'
import { setUpOf } from './set-up-of.ts'

/** What can be said of a test of which perhaps not all is entered yet. */
export function answerOf(
  input: Input,
  desk: StaticTestDesk,
  replaced: StaticTest | undefined,
): StaticTestAnswer {
  const by = {
    day: dayOf(input, desk),
    recordedOn: desk.now.slice(0, 10),
    exceptions: desk.exceptions,
  }
  const uses = instrumentFields
    .map((name) => chosenInstrument(input, name, desk))
    .filter((one) => one !== undefined)
    .map((one) => useOf(one, by))
  return { uses, plan: planOf(input, desk, replaced), outcome: outcomeOf(input, desk, replaced) }
}

function outcomeOf(
  input: Input,
  desk: StaticTestDesk,
  replaced: StaticTest | undefined,
): StaticTestAnswer['outcome'] {
  const fields = openFields(input, isConfirmed(input))
  const figures = parseStaticTestFigures(fields)
  const parsed = fields.finish({ figures, budget: parseStaticTestBudgetForm(fields) })
  if (!parsed.ok) {
    // What is still empty is no mistake yet: it is asked for.
    const faults = parsed.faults.filter((one) => one.kind !== 'empty')
    return faults.length > 0 ? { kind: 'faulty', faults } : { kind: 'ask' }
  }
  const test = parsed.value.figures
  const budget = carriedStaticTestBudget(parsed.value.budget, replaced)
  const setUp = { ...setUpOf(input, desk, budget), volumeL: test.volumeL }
  const computed = computeStaticTest(test, staticTestAccuracy(setUp, desk.instruments))
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
    leakUncertainty: computed.leakUncertainty,
    dropUncertainty: computed.dropUncertainty,
    smallestSeenPaM3PerS: smallestSeenLeak(computed.leakUncertainty),
    judged: judgeStaticTest({ ...test, ...computed }, desk),
  }
}
