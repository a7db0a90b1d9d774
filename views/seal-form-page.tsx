import type { FC } from 'hono/jsx'
import { confirmField } from '../src/domain/confirmed.ts'
import type { Customer } from '../src/domain/customer.ts'
import type { Equipment } from '../src/domain/equipment.ts'
import type { Fault } from '../src/domain/fault.ts'
import { arrangements } from '../src/domain/seal.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { SelectField } from './components/select-field.tsx'
import { ConfirmBeyond } from './confirm-beyond.tsx'
import { ownErrorOf } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { SealComponentsFields } from './seal-components-fields.tsx'
import { sealLabel } from './seal-label.ts'
import { summaryFaults } from './summary-faults.ts'
import { words } from './words/en.ts'

type Texts = Readonly<Record<string, string>>

export type SealFormTyped = {
  readonly texts: Texts
  /** One for each kind of component, in their order. */
  readonly components: readonly Texts[]
}

type Props = {
  readonly frame: Frame
  readonly customer: Customer
  readonly equipment: readonly Equipment[]
  readonly typed: SealFormTyped
  readonly faults: readonly Fault[]
  readonly formKey: string
  /** The seal has just come in: its order is asked for next. */
  readonly isReceipt: boolean
}

const w = words.customers.seal
const own = {
  'serial taken': w.serialTaken,
  'components empty': w.componentsNeedFace,
  'components too-few': w.componentsNeedFace,
} as const

/** Records a seal: what is written on it, how it is built, what it is made of. */
export const SealFormPage: FC<Props> = (props) => {
  const { frame, customer, typed, faults, formKey, isReceipt } = props
  const { chrome, workOrders } = words
  const over = isReceipt ? `${workOrders.receipt.title} · ${workOrders.receipt.step(2)}` : undefined
  return (
    <Page frame={frame} title={w.title} width="narrow">
      <PageHead
        title={w.title}
        lead={w.lead(customer.name)}
        {...(over === undefined ? {} : { over })}
      />
      <form method="post" action={`/customers/${customer.id}/seals`} class="stack-loose">
        <ErrorSummary title={chrome.faultsTitle} faults={summaryFaults(faults, sealLabel, own)} />
        <input type="hidden" name="formKey" value={formKey} />
        {isReceipt ? <input type="hidden" name="next" value="receipt" /> : null}
        <Identity {...props} />
        <Build {...props} />
        <SealComponentsFields
          typed={typed.components}
          faults={faults}
          {...ownErrorOf(faults, 'components', own)}
        />
        <ButtonRow>
          <Button label={w.submit} kind="main" size="large" />
        </ButtonRow>
      </form>
    </Page>
  )
}

const Identity: FC<Props> = ({ equipment, typed, faults }) => {
  const { texts } = typed
  return (
    <section class="stack">
      <h2>{w.identity}</h2>
      <Field
        name="serial"
        label={w.serial}
        hint={w.serialHint}
        value={texts.serial}
        isRequired
        {...ownErrorOf(faults, 'serial', own)}
      />
      <div class="field-pair">
        <Field
          name="drawing"
          label={w.drawing}
          value={texts.drawing}
          {...ownErrorOf(faults, 'drawing', own)}
        />
        <Field
          name="drawingRevision"
          label={w.drawingRevision}
          value={texts.drawingRevision}
          {...ownErrorOf(faults, 'drawingRevision', own)}
        />
      </div>
      <Field
        name="size"
        label={w.size}
        hint={w.sizeHint}
        value={texts.size}
        {...ownErrorOf(faults, 'size', own)}
      />
      <SelectField
        name="equipmentId"
        label={w.position}
        hint={w.positionHint}
        emptyLabel={w.noPosition}
        value={texts.equipmentId}
        options={equipment.map((one) => ({ value: String(one.id), label: one.tag }))}
        {...ownErrorOf(faults, 'equipmentId', own)}
      />
    </section>
  )
}

const Build: FC<Props> = ({ typed, faults }) => {
  const { trade } = words
  const { texts } = typed
  return (
    <section class="stack">
      <h2>{w.build}</h2>
      <ChoiceCards
        name="arrangement"
        legend={w.arrangement}
        value={texts.arrangement}
        choices={arrangements.map((value) => ({ value, label: trade.arrangement[value] }))}
        {...ownErrorOf(faults, 'arrangement', own)}
      />
      <Field
        name="shaftDiameterMm"
        label={w.shaft}
        unit={trade.unit.mm}
        value={texts.shaftDiameterMm}
        inputMode="decimal"
        width="number"
        isRequired
        {...ownErrorOf(faults, 'shaftDiameterMm', own)}
      />
      <ConfirmBeyond faults={faults} typed={texts[confirmField]} />
    </section>
  )
}
