import type { FC } from 'hono/jsx'
import { calibrationUnit } from '../../src/domain/calibration-unit.ts'
import { doubtWindow } from '../../src/domain/doubt-window.ts'
import type { Calibration, Instrument, ToleranceState } from '../../src/domain/instrument.ts'
import { DataTable } from '../components/data-table.tsx'
import { EmptyState } from '../components/empty-state.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { numberText } from '../figures/number-text.ts'
import { Cell } from '../order-record.tsx'
import { instrumentUnitSigns } from '../words/en/instrument-range.ts'
import { words } from '../words/en.ts'

/** Every calibration an instrument had, newest first. */
export const CalibrationsTable: FC<{ instrument: Instrument }> = ({ instrument }) => {
  const w = words.instruments
  const { calibrationColumn: column } = w
  if (instrument.calibrations.length === 0) {
    return <EmptyState title={w.noCalibration} text={w.noCalibrationText} />
  }
  const unit = calibrationUnit(instrument)
  const sign = unit === '' ? '' : instrumentUnitSigns[unit]
  return (
    <DataTable
      caption={w.calibrationsCaption}
      columns={[
        { label: column.calibratedOn },
        { label: column.dueOn },
        { label: column.certificateNumber },
        { label: column.asFound },
        { label: column.asLeft },
        { label: column.uncertainty },
      ]}
      rows={instrument.calibrations.toReversed().map((one) => ({
        mark: doubtWindow([one], one) === null ? undefined : 'stop',
        cells: [
          <span class="number">{one.calibratedOn}</span>,
          <span class="number">{one.dueOn}</span>,
          <Cell details={[one.laboratory, one.note]}>{one.certificateNumber}</Cell>,
          <Cell details={[errorText(one.asFoundError, sign), <TouchedLink of={one} />]}>
            <State state={one.asFound} />
          </Cell>,
          <Cell details={[errorText(one.asLeftError, sign)]}>
            <State state={one.asLeft} />
          </Cell>,
          uncertaintyText(one, sign),
        ],
      }))}
    />
  )
}

const State: FC<{ state: ToleranceState }> = ({ state }) => {
  const word = words.instruments.toleranceState[state]
  if (state === 'not-stated') return <span class="soft">{word}</span>
  return <VerdictMark verdict={state === 'beyond' ? 'fail' : 'pass'} word={word} />
}

/** Leads to what is in doubt since; nothing where nothing is. */
const TouchedLink: FC<{ of: Calibration }> = ({ of }) =>
  doubtWindow([of], of) === null ? null : (
    <a
      href={`/instruments/${of.instrumentId}/touched?calibration=${of.id}`}
      aria-label={words.instruments.touchedLabel(of.calibratedOn)}
    >
      {words.instruments.touched}
    </a>
  )

function errorText(error: number | null, sign: string): string {
  return error === null ? '' : `${numberText(error)} ${sign}`
}

function uncertaintyText({ expandedUncertainty, coverageFactor }: Calibration, sign: string) {
  const w = words.instruments
  if (expandedUncertainty === null) return <span class="soft">{w.notStated}</span>
  return w.expanded(numberText(expandedUncertainty), sign, numberText(coverageFactor ?? 2))
}
