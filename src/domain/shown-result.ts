import type { Characteristic } from './characteristic.ts'
import type { Evidence } from './evidence.ts'
import type { FlatnessSees } from './flatness-sees.ts'
import type { InstrumentUse } from './instrument.ts'
import { instrumentsOfValue } from './instruments-of-value.ts'
import type { Judged } from './judged.ts'
import {
  type JudgedReading,
  type JudgedTest,
  type JudgedValue,
  judgedReadings,
  judgedTests,
  judgedValues,
} from './judged-evidence.ts'
import type { ComponentKind } from './seal.ts'
import type { TestSection } from './static-test.ts'
import { testUncertainty } from './test-uncertainty.ts'
import type { Uncertainty } from './uncertainty.ts'
import type { UnreadableCause } from './unreadable-cause.ts'

/** The figures that have a page of their own; a static test has two. */
export const shownResultKinds = [
  'flatness-reading',
  'static-test-leak',
  'static-test-drop',
  'measured-value',
] as const
export type ShownResultKind = (typeof shownResultKinds)[number]

/** One figure of an order with all that speaks for it. */
export type ShownResult = {
  readonly kind: ShownResultKind
  readonly id: number
  readonly characteristic: Characteristic
  /** What it was measured on: a component, a section, or nothing but the machine. */
  readonly on: ComponentKind | TestSection | null
  /** What a figure of flatness is one of; null for every other characteristic. */
  readonly sees: FlatnessSees | null
  /** Of a face that could not be read, where it was said. */
  readonly unreadableCause: UnreadableCause | null
  readonly judged: Judged
  /** In the stored unit of the characteristic; null where it is not known. */
  readonly uncertainty: Uncertainty | null
  readonly instruments: readonly InstrumentUse[]
  /** It was recorded before budgets were kept; without an uncertainty nothing more is known. */
  readonly isOlderThanBudgets: boolean
  readonly method: string
  readonly note: string
  readonly recordedByName: string
  readonly recordedAt: string
  readonly isReplaced: boolean
}

/** The figure that an address names, as it is judged now; undefined where the order has none. */
export function shownResult(
  evidence: Evidence,
  kind: ShownResultKind,
  id: number,
): ShownResult | undefined {
  if (kind === 'flatness-reading') {
    const found = judgedReadings(evidence).find((one) => one.reading.id === id)
    return found && ofReading(found)
  }
  if (kind === 'measured-value') {
    const found = judgedValues(evidence).find((one) => one.measured.id === id)
    return found && ofValue(found, evidence)
  }
  const found = judgedTests(evidence).find((one) => one.test.id === id)
  return found && ofTest(found, kind)
}

function ofReading({ reading, judged, replacedBy }: JudgedReading): ShownResult {
  return {
    ...common(reading),
    kind: 'flatness-reading',
    characteristic: 'flatness',
    on: reading.faceKind,
    sees: reading.sees,
    unreadableCause: reading.unreadableCause,
    judged,
    uncertainty: reading.uncertainty,
    isOlderThanBudgets: reading.budgetInput === null,
    instruments: [reading.lamp, reading.flat],
    isReplaced: replacedBy !== null,
  }
}

function ofTest({ test, judged, replacedBy }: JudgedTest, kind: ShownResultKind): ShownResult {
  const characteristic = kind === 'static-test-drop' ? 'static-drop' : 'static-leak-rate'
  const own = judged.find((one) => one.characteristic === characteristic)
  if (own === undefined) throw new RangeError(`shownResult requires a verdict on ${characteristic}`)
  return {
    ...common(test),
    kind,
    characteristic,
    on: test.section,
    ...notOfFlatness,
    judged: own,
    uncertainty: testUncertainty(test, own),
    isOlderThanBudgets: test.budgetInput === null,
    instruments: [test.gauge, test.thermometer, test.volume].filter((one) => one !== null),
    isReplaced: replacedBy !== null,
  }
}

function ofValue({ measured, judged, replacedBy }: JudgedValue, evidence: Evidence): ShownResult {
  const { components } = evidence.seal
  return {
    ...common(measured),
    kind: 'measured-value',
    characteristic: measured.characteristic,
    on: components.find((one) => one.id === measured.componentId)?.kind ?? null,
    ...notOfFlatness,
    judged,
    uncertainty: measured.uncertainty,
    isOlderThanBudgets: false,
    instruments: instrumentsOfValue(measured),
    isReplaced: replacedBy !== null,
  }
}

const notOfFlatness = { sees: null, unreadableCause: null } as const

type Recorded = Pick<ShownResult, 'id' | 'method' | 'note' | 'recordedByName' | 'recordedAt'>

function common({ id, method, note, recordedByName, recordedAt }: Recorded): Recorded {
  return { id, method, note, recordedByName, recordedAt }
}
