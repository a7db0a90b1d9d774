import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { instrumentKinds } from '../src/domain/instrument.ts'
import type { InstrumentStanding } from '../src/domain/instrument-standing.ts'
import { ButtonLink } from './components/button-link.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { InstrumentForm, type InstrumentTyped } from './instrument-form.tsx'
import { InstrumentStatus } from './instrument-status.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

export type InstrumentsPageProps = {
  readonly frame: Frame
  readonly standings: readonly InstrumentStanding[]
  /** '' for every kind. */
  readonly kind: string
  /** Null for who may look only. */
  readonly form: {
    readonly formKey: string
    readonly typed: InstrumentTyped
    readonly faults: readonly Fault[]
  } | null
}

/** Every instrument, what needs a look first. */
export const InstrumentsPage: FC<InstrumentsPageProps> = ({ frame, standings, kind, form }) => {
  const w = words.instruments
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <div class="stack-loose">
        {form === null || form.faults.length === 0 ? null : <AddInstrument form={form} />}
        <section class="stack">
          <KindFilter kind={kind} />
          {standings.length === 0 ? (
            <EmptyState title={w.none} text={w.noneText} />
          ) : (
            <InstrumentTable standings={standings} />
          )}
        </section>
        {form === null || form.faults.length > 0 ? null : <AddInstrument form={form} />}
      </div>
    </Page>
  )
}

/** One tap, and the address says what is shown. */
const KindFilter: FC<{ kind: string }> = ({ kind }) => {
  const w = words.instruments
  const choices = [
    { value: '', label: w.anyKind },
    ...instrumentKinds.map((value) => ({ value, label: words.trade.instrumentKind[value] })),
  ]
  return (
    <nav class="cluster" aria-label={w.filterTitle}>
      {choices.map(({ value, label }) => (
        <ButtonLink
          href={value === '' ? '/instruments' : `/instruments?kind=${value}`}
          label={label}
          kind={value === kind ? 'main' : 'plain'}
          {...(value === kind ? { attributes: { 'aria-current': 'true' } } : {})}
        />
      ))}
    </nav>
  )
}

const InstrumentTable: FC<{ standings: readonly InstrumentStanding[] }> = ({ standings }) => {
  const w = words.instruments
  const { column } = w
  return (
    <DataTable
      caption={w.caption}
      isCaptionHidden
      columns={[
        { label: column.number },
        { label: column.status },
        { label: column.dueOn },
        { label: column.name },
        { label: column.kind },
      ]}
      rows={standings.map((one) => ({
        mark: markOf(one),
        cells: [
          <a class="number" href={`/instruments/${one.instrument.id}`}>
            {one.use.number}
          </a>,
          <InstrumentStatus standing={one} />,
          one.use.dueOn === null ? (
            <span class="soft">{w.notDue}</span>
          ) : (
            <span class="number">{one.use.dueOn}</span>
          ),
          one.use.name,
          words.trade.instrumentKind[one.use.kind],
        ],
      }))}
    />
  )
}

function markOf({ use }: InstrumentStanding): 'stop' | 'quiet' | undefined {
  if (use.status === 'withdrawn') return 'quiet'
  return use.status === 'in-calibration' ? undefined : 'stop'
}

/** Folded away until it is wanted; open and first on the page where something is wrong in it. */
const AddInstrument: FC<{ form: NonNullable<InstrumentsPageProps['form']> }> = ({ form }) => (
  <details class="fold" open={form.faults.length > 0}>
    <summary>{words.instruments.add}</summary>
    <div class="fold-body">
      <InstrumentForm {...form} />
    </div>
  </details>
)
