import type { FC } from 'hono/jsx'
import type { Customer } from '../src/domain/customer.ts'
import type { Fault } from '../src/domain/fault.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { ownErrorOf } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { summaryFaults } from './summary-faults.ts'
import { words } from './words/en.ts'

/** What was typed into a small form, what is wrong with it, and its key. */
export type SmallForm = {
  readonly typed: Readonly<Record<string, string>>
  readonly faults: readonly Fault[]
  readonly formKey: string
}

/** Customers by name; a manager adds one. */
export const CustomersPage: FC<{
  frame: Frame
  customers: readonly Customer[]
  mayAdd: boolean
  form: SmallForm
}> = ({ frame, customers, mayAdd, form }) => {
  const w = words.customers
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} />
      <div class="stack-loose">
        {customers.length === 0 ? (
          <EmptyState title={w.none} text={w.noneText} />
        ) : (
          <DataTable
            caption={w.caption}
            isCaptionHidden
            columns={[{ label: w.name }, { label: w.address }, { label: w.contact }]}
            rows={customers.map((one) => ({
              cells: [
                <a href={`/customers/${one.id}`}>{one.name}</a>,
                one.address === '' ? (
                  <span class="soft">{words.chrome.notStated}</span>
                ) : (
                  one.address
                ),
                one.contact === '' ? (
                  <span class="soft">{words.chrome.notStated}</span>
                ) : (
                  one.contact
                ),
              ],
            }))}
          />
        )}
        {mayAdd ? <AddCustomer {...form} /> : null}
      </div>
    </Page>
  )
}

const AddCustomer: FC<SmallForm> = ({ typed, faults, formKey }) => {
  const { chrome, customers: w } = words
  const own = { 'name taken': w.nameTaken }
  const labels: Record<string, string> = { name: w.name, address: w.address, contact: w.contact }
  return (
    <section class="card stack" id="add" aria-labelledby="add-title">
      <h2 id="add-title">{w.add}</h2>
      <ErrorSummary
        title={chrome.faultsTitle}
        faults={summaryFaults(faults, (field) => labels[field], own)}
      />
      <form method="post" action="/customers">
        <input type="hidden" name="formKey" value={formKey} />
        <Field
          name="name"
          label={w.name}
          value={typed.name}
          isRequired
          {...ownErrorOf(faults, 'name', own)}
        />
        <TextAreaField
          name="address"
          label={w.address}
          value={typed.address}
          {...ownErrorOf(faults, 'address', own)}
        />
        <Field
          name="contact"
          label={w.contact}
          value={typed.contact}
          {...ownErrorOf(faults, 'contact', own)}
        />
        <ButtonRow>
          <Button label={w.submit} kind="main" />
        </ButtonRow>
      </form>
    </section>
  )
}
