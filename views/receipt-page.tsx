import type { FC } from 'hono/jsx'
import type { AgreedRule } from '../src/domain/agreed-rule.ts'
import type { Customer } from '../src/domain/customer.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { LimitSet } from '../src/domain/limit-set.ts'
import type { Seal } from '../src/domain/seal.ts'
import { Button } from './components/button.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { numberText } from './figures/number-text.ts'
import { type Frame, Page } from './page.tsx'
import { ReceiptForm } from './receipt-form.tsx'
import type { ReceiptTyped } from './receipt-typed.ts'
import { words } from './words/en.ts'

/** First step of receipt: whose seal it is. */
export const ReceiptCustomerPage: FC<{
  frame: Frame
  customers: readonly Customer[]
  mayAddCustomer: boolean
}> = ({ frame, customers, mayAddCustomer }) => {
  const w = words.workOrders.receipt
  return (
    <Page frame={frame} title={w.title} width="narrow">
      <PageHead title={w.whose} over={`${w.title} · ${w.step(1)}`} />
      {customers.length === 0 ? (
        <EmptyState title={w.whoseEmpty} text={w.whoseEmptyText} />
      ) : (
        <ul class="job-list">
          {customers.map((one) => (
            <Choice href={`/work-orders/new?customer=${one.id}`} title={one.name} details={[]} />
          ))}
        </ul>
      )}
      {mayAddCustomer ? (
        <ButtonRow>
          <ButtonLink href="/customers#add" label={w.newCustomer} />
        </ButtonRow>
      ) : null}
    </Page>
  )
}

/** Second step: which of the customer's seals, or one that is new to the workshop. */
export const ReceiptSealPage: FC<{
  frame: Frame
  customer: Customer
  seals: readonly Seal[]
}> = ({ frame, customer, seals }) => {
  const w = words.workOrders.receipt
  const newSealHref = `/customers/${customer.id}/seals/new?next=receipt`
  return (
    <Page frame={frame} title={w.title} width="narrow">
      <PageHead
        title={w.which}
        over={`${w.title} · ${w.step(2)}`}
        lead={seals.length === 0 ? customer.name : w.whichLead(customer.name)}
      />
      <div class="stack">
        <ButtonRow>
          <ButtonLink href={newSealHref} label={w.newSeal} kind="main" size="large" />
          <ButtonLink href="/work-orders/new" label={w.otherCustomer} kind="quiet" size="large" />
        </ButtonRow>
        {seals.length === 0 ? (
          <EmptyState title={w.whichEmpty} />
        ) : (
          <ul class="job-list">
            {seals.map((one) => (
              <Choice
                href={`/work-orders/new?seal=${one.id}`}
                title={one.serial}
                details={sealDetails(one)}
              />
            ))}
          </ul>
        )}
      </div>
    </Page>
  )
}

/** Third step: what is stated about the seal. */
export const ReceiptPage: FC<{
  frame: Frame
  customer: Customer
  seal: Seal
  limitSets: readonly LimitSet[]
  agreedRule: AgreedRule
  mayStateRule: boolean
  typed: ReceiptTyped
  faults: readonly Fault[]
  formKey: string
}> = ({ frame, customer, seal, ...form }) => {
  const w = words.workOrders.receipt
  return (
    <Page frame={frame} title={w.title} width="narrow">
      <PageHead
        title={w.order}
        over={`${w.title} · ${w.step(3)}`}
        lead={w.orderLead(customer.name, seal.serial)}
      />
      <ReceiptForm seal={seal} {...form}>
        <Button label={w.submit} kind="main" size="large" />
        <ButtonLink
          href={`/work-orders/new?customer=${customer.id}`}
          label={w.otherSeal}
          kind="quiet"
          size="large"
        />
      </ReceiptForm>
    </Page>
  )
}

const Choice: FC<{ href: string; title: string; details: readonly string[] }> = (props) => (
  <li class="job">
    <a class="job-link" href={props.href}>
      {props.details.length === 0 ? (
        <span class="job-what strong">{props.title}</span>
      ) : (
        <>
          <span class="job-number">{props.title}</span>
          <span class="job-what">{props.details.join(' · ')}</span>
        </>
      )}
    </a>
  </li>
)

function sealDetails(seal: Seal): string[] {
  const { trade } = words
  return [
    trade.arrangement[seal.arrangement],
    `${numberText(seal.shaftDiameterMm)} ${trade.unit.mm}`,
    seal.drawing,
  ].filter((one) => one !== '')
}
