import type { FC } from 'hono/jsx'
import { type AgreedRule, houseRule } from '../src/domain/agreed-rule.ts'
import type { Customer } from '../src/domain/customer.ts'
import type { Equipment } from '../src/domain/equipment.ts'
import type { Seal } from '../src/domain/seal.ts'
import { AgreedRuleForm } from './agreed-rule-form.tsx'
import { AgreedRuleText } from './agreed-rule-text.tsx'
import { Button } from './components/button.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { DataTable } from './components/data-table.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Facts } from './components/facts.tsx'
import { Field } from './components/field.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import type { SmallForm } from './customers-page.tsx'
import { numberText } from './figures/number-text.ts'
import { ownErrorOf } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { summaryFaults } from './summary-faults.ts'
import { words } from './words/en.ts'

type Props = {
  readonly frame: Frame
  readonly customer: Customer
  readonly equipment: readonly Equipment[]
  readonly seals: readonly Seal[]
  readonly isRecorded: boolean
  readonly form: SmallForm
  /** Null where nothing is agreed. */
  readonly rule: AgreedRule | null
  /** Null for who agrees on nothing. */
  readonly ruleForm: SmallForm | null
}

/** A customer with the positions and seals of their plant. */
export const CustomerPage: FC<Props> = (props) => {
  const { frame, customer, isRecorded } = props
  const w = words.customers
  return (
    <Page frame={frame} title={customer.name}>
      <PageHead title={customer.name} over={w.over}>
        <ButtonRow>
          <ButtonLink href={`/work-orders?customer=${customer.id}`} label={w.orders} />
          <ButtonLink
            href={`/work-orders/new?customer=${customer.id}`}
            label={w.receive}
            kind="main"
          />
        </ButtonRow>
      </PageHead>
      <div class="stack-loose">
        {isRecorded ? <Notice kind="done" text={words.chrome.saved} /> : null}
        <Facts
          pairs={[
            { label: w.address, value: customer.address || words.chrome.notStated },
            { label: w.contact, value: customer.contact || words.chrome.notStated },
          ]}
        />
        <Seals {...props} />
        <Positions {...props} />
        <Rule {...props} />
      </div>
    </Page>
  )
}

const Rule: FC<Props> = ({ customer, rule, ruleForm }) => {
  const w = words.agreedRules
  return (
    <section class="stack" aria-labelledby="rule">
      <div class="section-head">
        <h2 id="rule">{w.title}</h2>
      </div>
      {rule === null ? <p class="soft">{w.noneOfCustomer}</p> : null}
      <AgreedRuleText rule={rule ?? houseRule} />
      {ruleForm === null ? null : (
        <AgreedRuleForm
          action={`/customers/${customer.id}/rule`}
          summary={w.agreeWithCustomer}
          note={w.ofCustomer}
          form={ruleForm}
        />
      )}
    </section>
  )
}

const Seals: FC<Props> = ({ customer, equipment, seals }) => {
  const w = words.customers
  const { column } = w
  return (
    <section aria-labelledby="seals">
      <div class="section-head">
        <h2 id="seals">{w.sealsTitle}</h2>
        <ButtonLink href={`/customers/${customer.id}/seals/new`} label={w.addSeal} />
      </div>
      {seals.length === 0 ? (
        <p class="soft">{w.sealsNone}</p>
      ) : (
        <DataTable
          caption={w.sealsCaption}
          isCaptionHidden
          columns={[
            { label: column.serial },
            { label: column.drawing },
            { label: column.arrangement },
            { label: column.shaft, kind: 'number' },
            { label: column.position },
            { label: column.receive, kind: 'act', isLabelHidden: true },
          ]}
          rows={seals.map((seal) => ({
            cells: [
              <a href={`/seals/${seal.id}`}>{seal.serial}</a>,
              seal.drawing || <span class="soft">{words.chrome.notStated}</span>,
              words.trade.arrangement[seal.arrangement],
              numberText(seal.shaftDiameterMm),
              equipment.find((one) => one.id === seal.equipmentId)?.tag ?? (
                <span class="soft">{words.workOrders.noPosition}</span>
              ),
              <a
                href={`/work-orders/new?seal=${seal.id}`}
                aria-label={w.receiveThisLabel(seal.serial)}
              >
                {w.receiveThis}
              </a>,
            ],
          }))}
        />
      )}
    </section>
  )
}

const Positions: FC<Props> = ({ customer, equipment, form }) => {
  const w = words.customers
  return (
    <section class="stack" aria-labelledby="positions">
      <div class="section-head">
        <h2 id="positions">{w.equipmentTitle}</h2>
      </div>
      {equipment.length === 0 ? (
        <p class="soft">{w.equipmentNone}</p>
      ) : (
        <DataTable
          caption={w.equipmentCaption}
          isCaptionHidden
          columns={[{ label: w.tag }, { label: w.description }, { label: w.serviceFluid }]}
          rows={equipment.map((one) => ({
            cells: [
              one.tag,
              one.description || <span class="soft">{words.chrome.notStated}</span>,
              one.serviceFluid || <span class="soft">{words.chrome.notStated}</span>,
            ],
          }))}
        />
      )}
      <AddPosition customer={customer} form={form} />
    </section>
  )
}

const AddPosition: FC<{ customer: Customer; form: SmallForm }> = ({ customer, form }) => {
  const { chrome, customers: w } = words
  const { typed, faults, formKey } = form
  const own = { 'tag taken': w.tagTaken }
  const { tag, description, serviceFluid } = w
  const labels: Record<string, string> = { tag, description, serviceFluid }
  return (
    <details class="fold" open={faults.length > 0}>
      <summary>{w.addEquipment}</summary>
      <form method="post" action={`/customers/${customer.id}/equipment`} class="fold-body">
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={summaryFaults(faults, (field) => labels[field], own)}
        />
        <input type="hidden" name="formKey" value={formKey} />
        <Field
          name="tag"
          label={w.tag}
          hint={w.tagHint}
          value={typed.tag}
          isRequired
          width="short"
          {...ownErrorOf(faults, 'tag', own)}
        />
        <div class="field-pair">
          <Field
            name="description"
            label={w.description}
            value={typed.description}
            {...ownErrorOf(faults, 'description', own)}
          />
          <Field
            name="serviceFluid"
            label={w.serviceFluid}
            value={typed.serviceFluid}
            {...ownErrorOf(faults, 'serviceFluid', own)}
          />
        </div>
        <ButtonRow>
          <Button label={w.submitEquipment} kind="main" />
        </ButtonRow>
      </form>
    </details>
  )
}
