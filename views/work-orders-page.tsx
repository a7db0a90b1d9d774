import type { FC } from 'hono/jsx'
import type { Customer } from '../src/domain/customer.ts'
import { allStages, stages } from '../src/domain/stage.ts'
import type { WorkOrderLine } from '../src/domain/work-order-line.ts'
import { Button } from './components/button.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { Pager } from './components/pager.tsx'
import { SelectField } from './components/select-field.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { dayText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

type Filter = { readonly q: string; readonly stage: string; readonly customer: string }

export type WorkOrdersPageProps = {
  readonly frame: Frame
  readonly lines: readonly WorkOrderLine[]
  readonly customers: readonly Customer[]
  readonly filter: Filter
  readonly isFirstPage: boolean
  readonly nextCursor: string | null
  readonly today: string
}

/** Every work order, newest first; the filters stand in the address. */
export const WorkOrdersPage: FC<WorkOrdersPageProps> = (props) => {
  const { frame, lines, customers, filter, isFirstPage, nextCursor, today } = props
  const w = words.workOrders
  const isFiltered = Object.values(filter).some((one) => one !== '')
  return (
    <Page frame={frame} title={w.listTitle} width="wide">
      <PageHead title={w.listTitle}>
        <ButtonLink href="/work-orders/new" label={w.receive} />
      </PageHead>
      <div class="stack records">
        <FilterForm filter={filter} customers={customers} isFiltered={isFiltered} />
        {lines.length === 0 ? (
          <EmptyState
            title={isFiltered ? w.nothing : w.noneYet}
            text={isFiltered ? w.nothingText : w.noneYetText}
          />
        ) : (
          <OrderTable lines={lines} today={today} />
        )}
        <Pager
          label={w.pagerLabel}
          position={w.shown(lines.length)}
          previous={isFirstPage ? undefined : { href: address(filter, ''), label: w.newest }}
          next={
            nextCursor === null ? undefined : { href: address(filter, nextCursor), label: w.older }
          }
        />
      </div>
    </Page>
  )
}

const FilterForm: FC<{
  filter: Filter
  customers: readonly Customer[]
  isFiltered: boolean
}> = ({ filter, customers, isFiltered }) => {
  const w = words.workOrders
  return (
    <search>
      <form method="get" action="/work-orders" aria-label={w.filterTitle}>
        <div class="field-pair">
          <Field name="q" label={w.q} value={filter.q} type="search" />
          <SelectField
            name="stage"
            label={w.stage}
            emptyLabel={w.anyStage}
            value={filter.stage}
            options={allStages.map((value) => ({ value, label: words.trade.stage[value] }))}
          />
          <SelectField
            name="customer"
            label={w.customer}
            emptyLabel={w.anyCustomer}
            value={filter.customer}
            options={customers.map((one) => ({ value: String(one.id), label: one.name }))}
          />
        </div>
        <ButtonRow>
          <Button label={w.filter} />
          {isFiltered ? <ButtonLink href="/work-orders" label={w.clear} kind="quiet" /> : null}
        </ButtonRow>
      </form>
    </search>
  )
}

const OrderTable: FC<{ lines: readonly WorkOrderLine[]; today: string }> = ({ lines, today }) => {
  const w = words.workOrders
  const { column } = w
  return (
    <DataTable
      caption={w.listCaption}
      isCaptionHidden
      columns={[
        { label: column.number },
        { label: column.stage },
        { label: column.customer },
        { label: column.seal },
        { label: column.position },
        { label: column.received },
        { label: column.due },
      ]}
      rows={lines.map((line) => ({
        mark: isOver(line) ? 'quiet' : undefined,
        cells: [
          <a class="number" href={`/work-orders/${line.number}`}>
            {line.number}
          </a>,
          line.stage === 'refused' ? (
            <VerdictMark verdict="refused" word={words.trade.stage[line.stage]} />
          ) : (
            words.trade.stage[line.stage]
          ),
          line.customerName,
          line.sealSerial,
          line.equipmentTag ?? <span class="soft">{w.noPosition}</span>,
          <span class="number">{dayText(line.receivedAt)}</span>,
          <Due line={line} today={today} />,
        ],
      }))}
    />
  )
}

const Due: FC<{ line: WorkOrderLine; today: string }> = ({ line, today }) => {
  const { dueOn } = line
  if (dueOn === null) return <span class="soft">{words.bench.noDue}</span>
  const isOverdue = dueOn < today && !isDone(line)
  if (!isOverdue) return <span class="number">{dueOn}</span>
  return <VerdictMark verdict="missing" word={words.bench.overdue(dueOn)} />
}

function isOver({ stage }: WorkOrderLine): boolean {
  return stage === 'dispatched' || stage === 'withdrawn'
}

/** Released or further: nothing is late any more. */
function isDone({ stage }: WorkOrderLine): boolean {
  const line: readonly string[] = stages
  return stage === 'withdrawn' || line.indexOf(stage) >= line.indexOf('released')
}

function address(filter: Filter, cursor: string): string {
  const pairs = Object.entries({ ...filter, cursor }).filter(([, value]) => value !== '')
  const query = new URLSearchParams(pairs).toString()
  return query === '' ? '/work-orders' : `/work-orders?${query}`
}
