import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { type InstrumentKind, instrumentKinds } from '../src/domain/instrument.ts'
import {
  type InstrumentStanding,
  type InstrumentState,
  instrumentState,
} from '../src/domain/instrument-standing.ts'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { InstrumentForm } from './instrument-form.tsx'
import { InstrumentFilter } from './instruments/instrument-filter.tsx'
import { InstrumentTable } from './instruments/instrument-table.tsx'
import type { InstrumentTyped } from './instruments/instrument-typed.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

export type InstrumentsPageProps = {
  readonly frame: Frame
  /** All of them, what needs a look first. */
  readonly standings: readonly InstrumentStanding[]
  /** By the id of the instrument. */
  readonly holders: ReadonlyMap<number, string>
  /** '' for every kind, and for every state. */
  readonly kind: InstrumentKind | ''
  readonly state: InstrumentState | ''
  /** Null for who may look only. */
  readonly form: {
    readonly formKey: string
    readonly typed: InstrumentTyped
    readonly faults: readonly Fault[]
  } | null
}

/** Every instrument: what needs a look first, the others by kind. */
export const InstrumentsPage: FC<InstrumentsPageProps> = (props) => {
  const { frame, standings, kind, state, form } = props
  const w = words.instruments
  const shown = standings.filter(
    (one) =>
      (kind === '' || one.instrument.kind === kind) &&
      (state === '' || instrumentState(one) === state),
  )
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <div class="stack-loose">
        {form === null || form.faults.length === 0 ? null : <AddInstrument form={form} />}
        <InstrumentFilter standings={standings} kind={kind} state={state} />
        {shown.length === 0 ? (
          <EmptyState title={w.none} text={w.noneText} />
        ) : (
          groupsOf(shown).map((group) => (
            <section class="stack" aria-label={group.title}>
              <div class="section-head">
                <h2>{group.title}</h2>
              </div>
              <InstrumentTable caption={group.title} standings={group.of} holders={props.holders} />
            </section>
          ))
        )}
        {form === null || form.faults.length > 0 ? null : <AddInstrument form={form} />}
      </div>
    </Page>
  )
}

/** Those that need a look over all kinds, then each kind; empty groups are left out. */
function groupsOf(standings: readonly InstrumentStanding[]) {
  const { instruments: w, trade } = words
  const isFine = (one: InstrumentStanding) =>
    ['in-calibration', 'withdrawn'].includes(instrumentState(one))
  const urgent = { title: w.needsLook, of: standings.filter((one) => !isFine(one)) }
  const kinds = instrumentKinds.map((kind) => ({
    title: trade.instrumentKind[kind],
    of: standings.filter((one) => isFine(one) && one.instrument.kind === kind),
  }))
  return [urgent, ...kinds].filter((group) => group.of.length > 0)
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
