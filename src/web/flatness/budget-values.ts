import type { BowValues, BudgetValues } from '../../../views/flatness/budget-values.ts'
import { expansionUmPerMK, flatExpansionPerK } from '../../domain/expansion.ts'
import type { Input } from '../../domain/fields.ts'
import type { BowInput, FlatnessBudgetInput } from '../../domain/flatness-budget-input.ts'
import { usualReadingHalfWidthBands } from '../../science/uncertainty/counted-flatness-budget.ts'
import type { FlatnessSetUp } from '../../store/last-flatness-set-up.ts'
import { nestedText } from '../nested-text.ts'
import { typedText } from '../typed-text.ts'

/**
 * What the same person stated last: how they read, from how far, and what their flat does. The
 * ring's difference stays with its order, and counts are made anew each time.
 */
export function freshBudget(last: FlatnessSetUp | undefined, workOrderId: number): BudgetValues {
  const input = last?.budgetInput ?? null
  if (input === null) return emptyBudget
  const isSameOrder = last?.workOrderId === workOrderId
  const thermal = isSameOrder ? ringOf(input.thermal) : emptyBow
  return { ...budgetOf(input), repeats: '', thermal }
}

/** What an earlier reading says, to be corrected; older ones say nothing. */
export function budgetOfReading(input: FlatnessBudgetInput | null): BudgetValues {
  return input === null ? emptyBudget : budgetOf(input)
}

/** What was typed, to be shown again. */
export function budgetOfInput(input: Input): BudgetValues {
  return {
    readingHalfWidthBands: typedText(input.readingHalfWidthBands),
    readingHalfWidthOther: typedText(input.readingHalfWidthOther),
    repeats: typedText(input.repeats),
    readerSpread: typedText(input.readerSpread),
    viewingAngleLimitDeg: typedText(input.viewingAngleLimitDeg),
    opticalFlatToleranceUm: typedText(input.opticalFlatToleranceUm),
    thermal: typedBow(input.thermal),
    flatThermal: typedBow(input.flatThermal),
  }
}

const offeredHalfWidths: readonly number[] = [0.1, 0.25, 0.5]

function budgetOf(input: FlatnessBudgetInput): BudgetValues {
  const { readingHalfWidthBands: halfWidth, repeats } = input
  const isOffered = halfWidth === null || offeredHalfWidths.includes(halfWidth)
  return {
    readingHalfWidthBands: text(isOffered ? (halfWidth ?? usualReadingHalfWidthBands) : null),
    readingHalfWidthOther: isOffered ? '' : text(halfWidth),
    repeats: repeats.map((one) => one.typed).join(' '),
    readerSpread: '',
    viewingAngleLimitDeg: text(input.viewingAngleLimitDeg),
    opticalFlatToleranceUm: text(input.opticalFlatToleranceUm),
    thermal: input.thermal === null ? emptyBow : bowOf(input.thermal),
    flatThermal: input.flatThermal === null ? emptyFlatBow : bowOf(input.flatThermal),
  }
}

/** Diameter and expansion follow the face that is read next: the two of a seal differ. */
function ringOf(bow: BowInput | null): BowValues {
  if (bow === null) return emptyBow
  return { ...emptyBow, deltaK: text(bow.deltaK), thicknessMm: text(bow.thicknessMm) }
}

function bowOf(bow: BowInput): BowValues {
  return {
    deltaK: text(bow.deltaK),
    thicknessMm: text(bow.thicknessMm),
    diameterMm: text(bow.diameterMm),
    expansionUmPerMK: text(expansionUmPerMK(bow.expansionPerK)),
  }
}

function typedBow(bow: unknown): BowValues {
  return {
    deltaK: nestedText(bow, 'deltaK'),
    thicknessMm: nestedText(bow, 'thicknessMm'),
    diameterMm: nestedText(bow, 'diameterMm'),
    expansionUmPerMK: nestedText(bow, 'expansionUmPerMK'),
  }
}

function text(value: number | null): string {
  return value === null ? '' : String(value)
}

const emptyBow: BowValues = { deltaK: '', thicknessMm: '', diameterMm: '', expansionUmPerMK: '' }
const emptyFlatBow: BowValues = {
  ...emptyBow,
  expansionUmPerMK: text(expansionUmPerMK(flatExpansionPerK['fused-silica'])),
}
const emptyBudget: BudgetValues = {
  readingHalfWidthBands: text(usualReadingHalfWidthBands),
  readingHalfWidthOther: '',
  repeats: '',
  readerSpread: '',
  viewingAngleLimitDeg: '',
  opticalFlatToleranceUm: '',
  thermal: emptyBow,
  flatThermal: emptyFlatBow,
}
