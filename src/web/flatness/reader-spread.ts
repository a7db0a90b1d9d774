import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import type { BandPattern } from '../../domain/flatness.ts'
import type { FlatnessBudgetInput } from '../../domain/flatness-budget-input.ts'
import { readerSpreadBudget } from '../../domain/reader-spread-budget.ts'
import { type ReaderSpread, readerSpreads } from '../../domain/reader-spreads.ts'
import { bandHeightUm } from '../../science/optics/band-height-um.ts'
import { type LampId, lamps } from '../../science/optics/lamps.ts'
import { typedText } from '../typed-text.ts'
import type { FlatnessDesk } from './desk.ts'

/** Where several people have read a face; what is being corrected doesn't speak for itself. */
export function spreadsBeside(
  { flatnessReadings, lapCycles }: FlatnessDesk,
  replacedId: number | undefined,
): readonly ReaderSpread[] {
  const others = flatnessReadings.filter((one) => one.id !== replacedId)
  return readerSpreads({ flatnessReadings: others, lapCycles })
}

/** The spread that the form asks to be used, for the face and condition that it names. */
export function askedSpread(
  input: Input,
  spreads: readonly ReaderSpread[],
): { readonly spread: ReaderSpread | null; readonly faults: readonly Fault[] } {
  if (typedText(input.readerSpread) !== 'yes') return { spread: null, faults: [] }
  const spread = spreads.find(
    (one) =>
      one.sees === 'taper' &&
      String(one.componentId) === typedText(input.faceId) &&
      one.condition === typedText(input.condition),
  )
  if (spread === undefined) {
    return { spread: null, faults: [{ field: 'readerSpread', kind: 'not-known' }] }
  }
  const isCountedAgain = typedText(input.repeats).trim() !== ''
  const both = { one: 'repeats', other: 'readerSpread' }
  const faults: readonly Fault[] = isCountedAgain
    ? [{ field: 'readerSpread', kind: 'one-of-two', with: both }]
    : []
  return { spread, faults }
}

/** What is stated, with the spread in bands of the lamp that is used now. */
export function budgetWithSpread(
  entered: FlatnessBudgetInput,
  spread: ReaderSpread | null,
  read: {
    readonly pattern: BandPattern
    readonly viewingAngleDeg: number
    readonly lampId: LampId
  },
): FlatnessBudgetInput {
  if (spread === null) return entered
  const { wavelengthNm } = lamps[read.lampId]
  const height = bandHeightUm({ wavelengthNm, viewingAngleDeg: read.viewingAngleDeg })
  return readerSpreadBudget(entered, spread, { ...read, bandHeightUm: height })
}
