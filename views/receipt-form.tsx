import type { Child, FC } from 'hono/jsx'
import type { AgreedRule } from '../src/domain/agreed-rule.ts'
import { confirmField } from '../src/domain/confirmed.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { LimitSet } from '../src/domain/limit-set.ts'
import type { Seal } from '../src/domain/seal.ts'
import { services } from '../src/domain/service.ts'
import { AgreedRuleFields, agreedRuleLabels } from './agreed-rule-fields.tsx'
import { AgreedRuleText } from './agreed-rule-text.tsx'
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
  service: receipt.service,
  ...agreedRuleLabels,
}

/** What is stated when a seal comes in: the order, the last fluid, the service data. */
export const ReceiptForm: FC<
  FormProps & {
    seal: Seal
    limitSets: readonly LimitSet[]
    /** What holds unless another is stated. */
    agreedRule: AgreedRule
    mayStateRule: boolean
    formKey: string
    children: Child
  }
> = ({ seal, limitSets, agreedRule, mayStateRule, typed, faults, formKey, children }) => {
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
      <RuleOfOrder agreedRule={agreedRule} mayStateRule={mayStateRule} {...field} />
      <ServiceData {...field} />
      <ButtonRow>{children}</ButtonRow>
    </form>
  )
}

/** What holds is told; another rule is rare, and folded away until it is wanted. */
const RuleOfOrder: FC<FormProps & { agreedRule: AgreedRule; mayStateRule: boolean }> = (props) => {
  const { agreedRule, mayStateRule, typed, faults } = props
  const w = words.agreedRules
  const isWanted = Object.keys(agreedRuleLabels).some((name) => (typed[name] ?? '') !== '')
  return (
    <section class="stack">
      <h2>{w.title}</h2>
      <AgreedRuleText rule={agreedRule} />
      {mayStateRule || isWanted ? (
        <details class="fold" open={isWanted}>
          <summary>{w.atReceipt}</summary>
          <div class="fold-body stack">
            <AgreedRuleFields typed={typed} faults={faults} />
          </div>
        </details>
      ) : null}
    </section>
  )
}

const ServiceData: FC<FormProps> = (field) => {
  const { trade, workOrders } = words
  const w = workOrders.receipt
  const { unit } = trade
  return (
    <section class="stack">
      <h2>{w.serviceTitle}</h2>
      <SelectField
        name="service"
        label={w.service}
        hint={w.serviceHint}
        value={field.typed.service ?? 'not-stated'}
        options={services.map((value) => ({ value, label: trade.service[value] }))}
        {...errorOf(field.faults, 'service')}
      />
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
