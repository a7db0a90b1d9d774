import {
  type StaticTestFormValues,
  type StaticTestValueName,
  staticTestValueNames,
} from '../../../views/static-tests/form-values.ts'
import type { Input } from '../../domain/fields.ts'
import { asPercent } from '../../domain/parse-static-test-budget.ts'
import { standardBarometerKPa } from '../../domain/parse-static-test-common.ts'
import {
  noStaticTestBudgetInput,
  type StaticTest,
  type StaticTestBudgetInput,
} from '../../domain/static-test.ts'
import { usualTimeS } from '../../domain/static-test-accuracy.ts'
import { lastInstruments } from '../../store/last-instruments.ts'
import { listStaticTests } from '../../store/list-static-tests.ts'
import type { AppContext } from '../context.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'
import type { StaticTestDesk } from './desk.ts'

/**
 * A fresh form. Gauge and thermometer are those in hand last; unit, reference and volume come
 * from the order's last test, which stood on the same rig, and so does what was stated for the
 * uncertainty. Nothing that is read is filled in.
 */
export function freshValues(c: AppContext, desk: StaticTestDesk): StaticTestFormValues {
  const { store } = c.var.shop
  const last = lastInstruments(store, viewer(c).id)
  const before = listStaticTests(store, desk.workOrder.id).at(-1)
  return {
    ...emptyValues,
    section: 'whole',
    pressureUnit: before?.typed.pressureUnit ?? 'bar',
    pressureReference: before?.typed.pressureReference ?? 'gauge',
    barometerKPa: text(standardBarometerKPa),
    volumeL: text(before?.volumeL),
    gaugeInstrumentId: text(last.gaugeInstrumentId),
    thermometerInstrumentId: text(last.thermometerInstrumentId),
    volumeInstrumentId: text(before?.volumeInstrumentId),
    ...budgetValues(before?.budgetInput ?? { ...noStaticTestBudgetInput, timeS: usualTimeS }),
  }
}

/** The form filled with what an earlier test says, to be corrected. */
export function valuesOfTest(test: StaticTest): StaticTestFormValues {
  const { typed } = test
  return {
    ...emptyValues,
    section: test.section,
    startPressure: typed.startPressure,
    endPressure: typed.endPressure,
    pressureUnit: typed.pressureUnit,
    pressureReference: typed.pressureReference,
    barometerKPa: typed.barometer === '' ? text(test.barometerKPa) : typed.barometer,
    startTemperatureC: text(test.startTemperatureC),
    endTemperatureC: text(test.endTemperatureC),
    startedAt: test.startedAt.slice(0, 19),
    durationS: text(test.durationS),
    ...volumeValues(test),
    stabilisationS: text(test.stabilisationS),
    leakPlace: test.leakPlace ?? '',
    gaugeInstrumentId: text(test.gaugeInstrumentId),
    thermometerInstrumentId: text(test.thermometerInstrumentId),
    volumeInstrumentId: text(test.volumeInstrumentId),
    ...budgetValues(test.budgetInput ?? noStaticTestBudgetInput),
    note: test.note,
  }
}

/** What was typed, to be shown again. */
export function valuesOfInput(input: Input): StaticTestFormValues {
  return valuesBy((name) => typedText(input[name]))
}

function valuesBy(textOf: (name: StaticTestValueName) => string): StaticTestFormValues {
  const pairs = staticTestValueNames.map((name) => [name, textOf(name)] as const)
  return Object.fromEntries(pairs) as StaticTestFormValues
}

function budgetValues(input: StaticTestBudgetInput): Partial<StaticTestFormValues> {
  const { volumeRelative } = input
  return {
    volumeUncertaintyPercent: text(volumeRelative === null ? null : asPercent(volumeRelative)),
    pressureUncertaintyPa: text(input.pressurePa),
    temperatureUncertaintyK: text(input.temperatureK),
    timeUncertaintyS: text(input.timeS),
  }
}

const emptyValues = valuesBy(() => '')

function text(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value)
}

/** A volume found by expansion follows from what was read again; any other stands as it is. */
function volumeValues({ volumeL, expansion }: StaticTest) {
  if (expansion === null) return { volumeL: text(volumeL) }
  const { typed, ...read } = expansion
  return {
    volumeL: '',
    knownVolumeL: typed?.knownVolumeL ?? text(read.knownVolumeL),
    // A program sends kPa absolute, and its test is corrected in that.
    filledPressure: typed?.filled ?? text(read.filledKPaAbs),
    beforePressure: typed?.before ?? text(read.beforeKPaAbs),
    joinedPressure: typed?.joined ?? text(read.joinedKPaAbs),
  }
}
