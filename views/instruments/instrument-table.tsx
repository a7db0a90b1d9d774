import type { FC } from 'hono/jsx'
import type { InstrumentStanding } from '../../src/domain/instrument-standing.ts'
import { DataTable } from '../components/data-table.tsx'
import { InstrumentStatus } from '../instrument-status.tsx'
import { words } from '../words/en.ts'

/** Instruments with how they stand and who holds them. */
export const InstrumentTable: FC<{
  caption: string
  standings: readonly InstrumentStanding[]
  holders: ReadonlyMap<number, string>
}> = ({ caption, standings, holders }) => {
  const w = words.instruments
  const { column } = w
  return (
    <DataTable
      caption={caption}
      isCaptionHidden
      columns={[
        { label: column.number },
        { label: column.status },
        { label: column.dueOn },
        { label: column.name },
        { label: column.holder },
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
          holders.get(one.instrument.id) ?? <span class="soft">{w.nobody}</span>,
        ],
      }))}
    />
  )
}

function markOf({ use }: InstrumentStanding): 'stop' | 'quiet' | undefined {
  if (use.status === 'withdrawn') return 'quiet'
  return use.status === 'in-calibration' ? undefined : 'stop'
}
