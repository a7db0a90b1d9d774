import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import type { ReaderSpread } from '../../src/domain/reader-spreads.ts'
import { CheckField } from '../components/check-field.tsx'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { spreadTexts } from '../reader-spreads.tsx'
import { words } from '../words/en.ts'
import type { BowValues, BudgetValues } from './budget-values.ts'
import { flatnessFieldId, flatnessSentence } from './fault-sentence.ts'

type Props = { readonly values: BudgetValues; readonly faults: readonly Fault[] }

const number = { inputMode: 'decimal', width: 'number' } as const

/** What only the reader knows about the count; folded away, since it is as it was last time. */
export const BudgetFields: FC<Props & { readonly spreads: readonly ReaderSpread[] }> = (props) => {
  const { values, faults, spreads } = props
  const { budget: w } = words.flatness
  const isFaulty = faults.some((one) => isOfBudget(one.field))
  return (
    <details class="fold" open={isFaulty} id="uncertainty">
      <summary>{w.title}</summary>
      <div class="fold-body stack">
        <p class="field-hint">{w.hint}</p>
        <CountFields values={values} faults={faults} />
        <SpreadField values={values} faults={faults} spreads={spreads} />
        <ViewFields values={values} faults={faults} />
        <BowFields name="thermal" values={values.thermal} faults={faults} />
        <BowFields name="flatThermal" values={values.flatThermal} faults={faults} />
      </div>
    </details>
  )
}

const CountFields: FC<Props> = ({ values, faults }) => {
  const { budget: w } = words.flatness
  const { bands } = words.trade.unit
  const isTyped = values.readingHalfWidthOther !== ''
  const halfWidthError = errorOf(faults, 'readingHalfWidthBands')
  return (
    <>
      <ChoiceCards
        name="readingHalfWidthBands"
        legend={w.halfWidth}
        hint={w.halfWidthHint}
        value={values.readingHalfWidthBands}
        choices={w.halfWidths.map(({ value, label }) => ({ value, label }))}
        error={isTyped ? undefined : halfWidthError}
      />
      <Field
        name="readingHalfWidthOther"
        {...number}
        label={w.halfWidthOther}
        unit={bands}
        value={values.readingHalfWidthOther}
        error={isTyped ? halfWidthError : undefined}
      />
      <Field
        name="repeats"
        label={w.repeats}
        hint={w.repeatsHint}
        unit={bands}
        value={values.repeats}
        error={errorOf(faults, 'repeats')}
      />
    </>
  )
}

/** Offered where several people have read a face of the order; ticked by nobody but the reader. */
const SpreadField: FC<Props & { readonly spreads: readonly ReaderSpread[] }> = (props) => {
  const { values, faults, spreads } = props
  const { readers: w } = words
  const error = errorOf(faults, 'readerSpread')
  const isTicked = values.readerSpread === 'yes'
  if (spreads.length === 0 && !isTicked) return null
  return (
    <CheckField
      name="readerSpread"
      value="yes"
      isChecked={isTicked}
      label={w.use}
      hint={`${spreads.map((one) => w.offer(...spreadTexts(one))).join(' ')} ${w.useHint}`}
      error={error}
    />
  )
}

const ViewFields: FC<Props> = ({ values, faults }) => {
  const { budget: w } = words.flatness
  const { unit } = words.trade
  return (
    <div class="field-pair">
      <Field
        name="viewingAngleLimitDeg"
        {...number}
        label={w.angleLimit}
        hint={w.angleLimitHint}
        unit={unit.deg}
        value={values.viewingAngleLimitDeg}
        error={errorOf(faults, 'viewingAngleLimitDeg')}
      />
      <Field
        name="opticalFlatToleranceUm"
        {...number}
        label={w.flatTolerance}
        hint={w.flatToleranceHint}
        unit={unit.um}
        value={values.opticalFlatToleranceUm}
        error={errorOf(faults, 'opticalFlatToleranceUm')}
      />
    </div>
  )
}

const bowNames = ['deltaK', 'thicknessMm', 'diameterMm', 'expansionUmPerMK'] as const

const BowFields: FC<{
  name: 'thermal' | 'flatThermal'
  values: BowValues
  faults: readonly Fault[]
}> = ({ name, values, faults }) => {
  const w = words.flatness.budget[name]
  const { bowUnit } = words.flatness.budget
  return (
    <fieldset class="stack-tight">
      <legend class="choices-legend">{w.legend}</legend>
      <p class="field-hint">{w.hint}</p>
      <div class="field-pair">
        {bowNames.map((part) => (
          <Field
            name={`${name}.${part}`}
            {...number}
            label={w[part]}
            hint={w.partHint[part]}
            unit={bowUnit[part]}
            value={values[part]}
            error={errorOf(faults, `${name}.${part}`)}
          />
        ))}
      </div>
    </fieldset>
  )
}

/** By the element that shows it: a fault within the repeats stands at their one line. */
function errorOf(faults: readonly Fault[], field: string): string | undefined {
  const fault = faults.find((one) => one.field === field || whole(one.field) === field)
  return fault === undefined ? undefined : flatnessSentence(fault, '')
}

function whole(field: string): string {
  const name = field.replace('expansionPerK', 'expansionUmPerMK')
  return name.startsWith('repeat') ? 'repeats' : name
}

const budgetFields = [
  'readingHalfWidthBands',
  'repeats',
  'readerSpread',
  'viewingAngleLimitDeg',
  'opticalFlatToleranceUm',
  ...bowNames.flatMap((part) => [`thermal.${part}`, `flatThermal.${part}`]),
]

function isOfBudget(field: string): boolean {
  return budgetFields.includes(whole(field))
}

/** The element that a fault of the budget belongs to, for the links above the form. */
export function budgetFieldId(field: string, values: BudgetValues): string {
  if (!isOfBudget(field)) return flatnessFieldId(field)
  const id = whole(field)
  if (id !== 'readingHalfWidthBands') return id
  return values.readingHalfWidthOther === '' ? `${id}-1` : 'readingHalfWidthOther'
}
