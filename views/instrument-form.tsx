import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { instrumentKinds } from '../src/domain/instrument.ts'
import { lampIds, lamps } from '../src/science/optics/lamps.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import { numberText } from './figures/number-text.ts'
import type { InstrumentTyped } from './instruments/instrument-typed.ts'
import { InstrumentNumbersFields } from './instruments/numbers-fields.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { instrumentSentences } from './words/en/instruments.ts'
import { words } from './words/en.ts'

/** Adds an instrument: what stands on it, and what readings need to know of it. */
export const InstrumentForm: FC<{
  formKey: string
  typed: InstrumentTyped
  faults: readonly Fault[]
}> = ({ formKey, typed, faults }) => {
  const { instruments: w, trade, chrome } = words
  const plain = (name: 'number' | 'name' | 'serial' | 'range' | 'resolution') => ({
    name,
    value: typed[name],
    ...ownErrorOf(faults, name, instrumentSentences),
  })
  return (
    <form method="post" action="/instruments" class="stack">
      <ErrorSummary
        title={chrome.faultsTitle}
        faults={faults.map((one) => ({
          fieldId: one.field === 'kind' ? 'kind-1' : one.field,
          message: ownSentence(one, instrumentSentences),
        }))}
      />
      <input type="hidden" name="formKey" value={formKey} />
      <p class="soft">{w.addLead}</p>
      <ChoiceCards
        name="kind"
        legend={w.kind}
        value={typed.kind}
        choices={instrumentKinds.map((value) => ({ value, label: trade.instrumentKind[value] }))}
        {...ownErrorOf(faults, 'kind', instrumentSentences)}
      />
      <div class="field-pair">
        <Field {...plain('number')} label={w.number} hint={w.numberHint} isRequired />
        <Field {...plain('name')} label={w.name} isRequired />
        <Field {...plain('serial')} label={w.serial} />
      </div>
      <div class="field-pair">
        <SelectField
          name="lampId"
          label={w.lamp}
          hint={w.lampHint}
          emptyLabel={w.noLamp}
          value={typed.lampId}
          options={lampIds.map((id) => ({ value: id, label: lampLabel(id) }))}
          {...ownErrorOf(faults, 'lampId', instrumentSentences)}
        />
        <Field
          name="flatToleranceUm"
          label={w.tolerance}
          hint={w.toleranceHint}
          unit={trade.unit.um}
          inputMode="decimal"
          width="number"
          value={typed.flatToleranceUm}
          {...ownErrorOf(faults, 'flatToleranceUm', instrumentSentences)}
        />
      </div>
      <div class="field-pair">
        <Field {...plain('range')} label={w.range} hint={w.rangeHint} />
        <Field {...plain('resolution')} label={w.resolution} />
      </div>
      <InstrumentNumbersFields typed={typed} faults={faults} />
      <ButtonRow>
        <Button label={w.submit} kind="main" />
      </ButtonRow>
    </form>
  )
}

/** A lamp with its wavelength and how sure that is. */
export function lampLabel(id: (typeof lampIds)[number]): string {
  const { wavelengthNm, basis } = lamps[id]
  const { instruments, trade } = words
  return instruments.lampOption(trade.lamp[id], numberText(wavelengthNm), basis)
}
