import type { Child, FC } from 'hono/jsx'
import { confirmField } from '../src/domain/confirmed.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { LimitSet } from '../src/domain/limit-set.ts'
import type { Seal } from '../src/domain/seal.ts'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { ConfirmBeyond } from './confirm-beyond.tsx'
import { errorOf } from './error-of.ts'
import { DecontaminationFields, ResidueCaution } from './order-decontamination.tsx'
import type { ReceiptTyped } from './receipt-typed.ts'
import { summaryFaults } from './summary-faults.ts'
import { words } from './words/en.ts'

type FormProps = {
  readonly typed: ReceiptTyped
  readonly faults: readonly Fault[]
}

const { receipt, decontaminationLegend, lastFluid } = words.workOrders
const labels: Readonly<Record<string, string>> = {
  decontamination: decontaminationLegend,
  lastFluid,
  customerOrder: receipt.customerOrder,
  dueOn: receipt.dueOn,
  reasonForRemoval: receipt.reasonForRemoval,
  limitSetId: receipt.limitSet,
  sealedPressureKPa: receipt.sealedPressure,
  serviceTemperatureC: receipt.serviceTemperature,
  shaftSpeedPerMin: receipt.shaftSpeed,
}

/** What is stated when a seal comes in: the order, the last fluid, the service data. */
export const ReceiptForm: FC<
  FormProps & {
    seal: Seal
    limitSets: readonly LimitSet[]
    formKey: string
    children: Child
  }
> = ({ seal, limitSets, typed, faults, formKey, children }) => {
  const { chrome, workOrders } = words
  const w = workOrders.receipt
  const field = { typed, faults }
  return (
    <form method="post" action="/work-orders" class="stack-loose">
      <ErrorSummary
        title={chrome.faultsTitle}
        faults={summaryFaults(faults, (field) => labels[field])}
      />
      <input type="hidden" name="formKey" value={formKey} />
      <input type="hidden" name="sealId" value={String(seal.id)} />
      <section class="stack">
        <h2>{workOrders.decontaminationTitle}</h2>
        <ResidueCaution />
        <DecontaminationFields
          typed={{ state: typed.decontamination ?? '', lastFluid: typed.lastFluid ?? '' }}
          faults={faults}
        />
      </section>
      <section class="stack">
        <h2>{workOrders.orderTitle}</h2>
        <div class="field-pair">
          <Typed name="customerOrder" label={w.customerOrder} {...field} />
          <Typed name="dueOn" label={w.dueOn} type="date" {...field} />
        </div>
        <TextAreaField
          name="reasonForRemoval"
          label={w.reasonForRemoval}
          value={typed.reasonForRemoval}
          rows={2}
          {...errorOf(faults, 'reasonForRemoval')}
        />
        <SelectField
          name="limitSetId"
          label={w.limitSet}
          value={typed.limitSetId}
          options={limitSets.map(({ id, name, version }) => {
            return { value: String(id), label: workOrders.limitSet(name, version) }
          })}
          {...errorOf(faults, 'limitSetId')}
        />
      </section>
      <ServiceData {...field} />
      <ButtonRow>{children}</ButtonRow>
    </form>
  )
}

const ServiceData: FC<FormProps> = (field) => {
  const { trade, workOrders } = words
  const w = workOrders.receipt
  const { unit } = trade
  return (
    <section class="stack">
      <h2>{w.serviceTitle}</h2>
      <div class="field-pair">
        <Typed name="sealedPressureKPa" label={w.sealedPressure} unit={unit.kPa} {...field} />
        <Typed name="serviceTemperatureC" label={w.serviceTemperature} unit={unit.c} {...field} />
        <Typed name="shaftSpeedPerMin" label={w.shaftSpeed} unit={unit.perMin} {...field} />
      </div>
      <ConfirmBeyond faults={field.faults} typed={field.typed[confirmField]} />
    </section>
  )
}

const Typed: FC<
  FormProps & {
    name: string
    label: string
    hint?: string
    unit?: string
    type?: 'date'
  }
> = ({ name, label, hint, unit, type, typed, faults }) => (
  <Field
    name={name}
    label={label}
    hint={hint}
    unit={unit}
    value={typed[name]}
    {...(type === undefined ? {} : { type })}
    {...(unit === undefined ? {} : ({ inputMode: 'decimal', width: 'number' } as const))}
    {...errorOf(faults, name)}
  />
)
