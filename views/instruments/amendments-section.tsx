import type { FC } from 'hono/jsx'
import {
  type AmendedFrom,
  amendedNames,
  type InstrumentNumbers,
} from '../../src/domain/instrument-amendment.ts'
import { unitsOfKind } from '../../src/domain/units-of-kind.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { DataTable } from '../components/data-table.tsx'
import { Field } from '../components/field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { numberText } from '../figures/number-text.ts'
import { minuteText } from '../figures/time-text.ts'
import { ownErrorOf } from '../own-error-of.ts'
import { instrumentUnitSigns } from '../words/en/instrument-range.ts'
import { instrumentSentences } from '../words/en/instruments.ts'
import { words } from '../words/en.ts'
import type { InstrumentForms } from './forms.ts'
import { InstrumentNumbersFields } from './numbers-fields.tsx'
import type { NumbersTyped } from './numbers-text.ts'

const w = words.instruments

export type AmendmentsProps = {
  /** Newest first. */
  readonly amendments: readonly AmendedFrom[]
  readonly numbersTyped: NumbersTyped
  /** Null for who may look only. */
  readonly forms: InstrumentForms | null
}

/** How an instrument's numbers became what they are, and the form to amend them. */
export const AmendmentsSection: FC<AmendmentsProps> = ({ amendments, numbersTyped, forms }) => (
  <div class="stack">
    {amendments.length === 0 ? null : (
      <DataTable
        caption={w.amendmentsCaption}
        columns={[
          { label: w.amendmentColumns.at },
          { label: w.amendmentColumns.change },
          { label: w.amendmentColumns.reason },
          { label: w.amendmentColumns.by },
        ]}
        rows={amendments.map((one) => ({
          cells: [
            <span class="when">{minuteText(one.became.at)}</span>,
            changesText(one).map((text) => <p>{text}</p>),
            one.became.reason,
            one.became.byName,
          ],
        }))}
      />
    )}
    {forms === null ? null : (
      <AmendForm {...forms} numbersTyped={numbersTyped} seenId={amendments[0]?.became.id ?? 0} />
    )}
  </div>
)

type Name = (typeof amendedNames)[number]

const labels: Readonly<Record<Name, string>> = {
  flatToleranceUm: w.tolerance,
  range: w.range,
  resolution: w.resolution,
  unit: w.unit,
  rangeFrom: w.rangeFrom,
  rangeTo: w.rangeTo,
  resolutionStep: w.step,
  largestError: w.largestError,
}

function changesText({ was, became }: AmendedFrom): readonly string[] {
  return amendedNames
    .filter((name) => isOther(name, was, became))
    .map((name) => w.became(labels[name], shownText(name, was), shownText(name, became)))
}

/** A number that stayed became another one where its unit did. */
function isOther(name: Name, was: InstrumentNumbers, became: InstrumentNumbers): boolean {
  const hasUnit = name !== 'flatToleranceUm' && typeof became[name] === 'number'
  return was[name] !== became[name] || (hasUnit && was.unit !== became.unit)
}

function shownText(name: Name, numbers: InstrumentNumbers): string {
  const value = numbers[name]
  if (value === null || value === '') return w.notStated
  if (typeof value === 'string') return name === 'unit' ? signOf(numbers.unit) : value
  const sign = name === 'flatToleranceUm' ? words.trade.unit.um : signOf(numbers.unit)
  return `${numberText(value)} ${sign}`
}

function signOf(unit: InstrumentNumbers['unit']): string {
  return unit === '' ? '' : instrumentUnitSigns[unit]
}

const AmendForm: FC<InstrumentForms & { numbersTyped: NumbersTyped; seenId: number }> = (props) => {
  const { instrument, formKey, typed, faults, numbersTyped, seenId } = props
  const isOpen = faults.some((one) => [...amendedNames, 'amendReason'].includes(one.field))
  const error = (name: string) => ownErrorOf(faults, name, instrumentSentences)
  return (
    <details class="fold" open={isOpen}>
      <summary>{w.amend}</summary>
      <form method="post" action={`/instruments/${instrument.id}/numbers`} class="fold-body stack">
        <input type="hidden" name="formKey" value={`${formKey}-numbers`} />
        <input type="hidden" name="seenAmendment" value={String(seenId)} />
        <p class="soft">{w.amendLead}</p>
        <div class="field-pair">
          <Field
            name="range"
            label={w.range}
            hint={w.rangeHint}
            value={numbersTyped.range}
            {...error('range')}
          />
          <Field
            name="resolution"
            label={w.resolution}
            value={numbersTyped.resolution}
            {...error('resolution')}
          />
          {instrument.kind === 'optical-flat' ? (
            <Field
              name="flatToleranceUm"
              label={w.tolerance}
              unit={words.trade.unit.um}
              inputMode="decimal"
              width="number"
              value={numbersTyped.flatToleranceUm}
              {...error('flatToleranceUm')}
            />
          ) : null}
        </div>
        {unitsOfKind[instrument.kind].length === 0 ? null : (
          <InstrumentNumbersFields
            typed={numbersTyped}
            faults={faults}
            units={unitsOfKind[instrument.kind]}
          />
        )}
        <TextAreaField
          name="amendReason"
          label={w.amendReason}
          hint={w.amendReasonHint}
          value={typed.amendReason}
          isRequired
          {...error('amendReason')}
        />
        <ButtonRow>
          <Button label={w.submitAmendment} />
        </ButtonRow>
      </form>
    </details>
  )
}
