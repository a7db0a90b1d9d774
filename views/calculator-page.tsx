import type { FC } from 'hono/jsx'
import { type BandConversion, bandQuantities } from '../src/domain/band-conversion.ts'
import type { Fault } from '../src/domain/fault.ts'
import { lampIds, lamps } from '../src/science/optics/lamps.ts'
import { CalculatorAnswer } from './calculator/answer.tsx'
import { CalculatorTabs } from './calculator/calculator-tabs.tsx'
import { LampTable } from './calculator/lamp-table.tsx'
import { type CalculatorValues, NumberFields } from './calculator/number-fields.tsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { PageHead } from './components/page-head.tsx'
import { SelectField } from './components/select-field.tsx'
import { errorOf } from './error-of.ts'
import { numberText } from './figures/number-text.ts'
import { type Frame, Page } from './page.tsx'
import { liveLookUp } from './recording/live-answer.ts'
import { words } from './words/en.ts'

export type Calculation = {
  readonly values: CalculatorValues
  readonly faults: readonly Fault[]
  /** Null where a field is faulty. */
  readonly conversion: BandConversion | null
}

export const CalculatorPage: FC<{ frame: Frame; calculation: Calculation }> = (props) => {
  const { frame, calculation } = props
  const { calculator: w, trade } = words
  const { values, faults, conversion } = calculation
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <CalculatorTabs current="bands" />
      <form method="get" action="/calculator" class="reading">
        <div class="stack">
          <ChoiceCards
            name="quantity"
            legend={w.quantity}
            value={values.quantity}
            choices={bandQuantities.map((value) => ({ value, label: w.quantities[value] }))}
            {...errorOf(faults, 'quantity')}
          />
          <div class="field-pair">
            <NumberFields values={values} faults={faults} />
          </div>
          <SelectField
            name="lamp"
            label={w.lamp}
            value={values.lamp}
            options={lampIds.map((id) => ({
              value: id,
              label: `${trade.lamp[id]} · ${numberText(lamps[id].wavelengthNm)} ${trade.unit.nm}`,
            }))}
            {...errorOf(faults, 'lamp')}
          />
          <LampTable conversion={conversion} />
        </div>
        <aside class="reading-answer" aria-label={w.answer}>
          <div id="answer" class="stack" aria-live="polite" {...liveLookUp('/calculator')}>
            <CalculatorAnswer conversion={conversion} />
          </div>
          <ButtonRow>
            <Button label={w.submit} kind="main" size="large" />
          </ButtonRow>
        </aside>
      </form>
    </Page>
  )
}

/** What the server sends while the form is filled in. */
export const CalculatorFragment: FC<{ calculation: Calculation }> = ({ calculation }) => (
  <>
    <CalculatorAnswer conversion={calculation.conversion} />
    <NumberFields values={calculation.values} faults={calculation.faults} isSwap />
    <LampTable conversion={calculation.conversion} isSwap />
  </>
)
