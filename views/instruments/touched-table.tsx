import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import type { TouchedRecord } from '../../src/domain/touched-record.ts'
import { CheckField } from '../components/check-field.tsx'
import { DataTable, type Row } from '../components/data-table.tsx'
import { resultText } from '../figures/result-text.ts'
import { minuteText } from '../figures/time-text.ts'
import { words } from '../words/en.ts'

/** Records in doubt; with a box for each where they can be ticked (`ticked` not null). */
export const TouchedTable: FC<{
  touched: readonly TouchedRecord[]
  ticked: readonly string[] | null
}> = ({ touched, ticked }) => {
  const { columns, caption } = words.touched
  return (
    <DataTable
      caption={caption}
      columns={[
        { label: columns.record },
        { label: columns.order },
        { label: columns.value, kind: 'number' },
        { label: columns.certificates },
        { label: columns.answer },
      ]}
      rows={touched.map((one) => rowOf(one, ticked))}
    />
  )
}

function rowOf(one: TouchedRecord, ticked: readonly string[] | null): Row {
  const w = words.touched
  return {
    mark: one.isReplaced ? 'quiet' : one.answer === null ? 'stop' : undefined,
    cells: [
      <Which one={one} ticked={ticked} />,
      <>
        <a href={`/work-orders/${one.workOrderNumber}`}>{one.workOrderNumber}</a>
        <p class="cell-detail">{one.customerName}</p>
      </>,
      one.figures.map((figure) => <p>{figureText(figure)}</p>),
      one.certificateNumbers.length === 0
        ? w.noCertificate
        : one.certificateNumbers.map((number) => (
            <p>
              <a href={`/certificates/${number}`}>{number}</a>
            </p>
          )),
      <Answer one={one} />,
    ],
  }
}

const Which: FC<{ one: TouchedRecord; ticked: readonly string[] | null }> = ({ one, ticked }) => {
  const w = words.touched
  const value = `${one.subjectKind} ${one.subjectId}`
  const label = w.record(w.kinds[one.subjectKind], one.subjectId)
  return (
    <>
      {ticked === null ? (
        label
      ) : (
        <CheckField
          name="records"
          id={`records-${value.replace(' ', '-')}`}
          value={value}
          label={label}
          isChecked={ticked.includes(value)}
        />
      )}
      <p class="cell-detail">
        {one.isReplaced ? `${minuteText(one.usedAt)}, ${w.replaced}` : minuteText(one.usedAt)}
      </p>
    </>
  )
}

const Answer: FC<{ one: TouchedRecord }> = ({ one }) => {
  const w = words.touched
  if (one.answer === null) return w.unanswered
  return (
    <>
      <strong>{w.answers[one.answer]}</strong>
      <p class="cell-detail">{one.reason}</p>
      <p class="cell-detail">{w.by(one.byName, minuteText(one.at))}</p>
    </>
  )
}

function figureText({ characteristic, value }: TouchedRecord['figures'][number]): string {
  if (characteristic === 'spring-load') {
    return value === null ? words.touched.noLoad : `${figure(value, { decimals: 1 }).text} N`
  }
  if (value === null) return words.chrome.unreadable
  if (characteristic === 'track-movement') {
    return `${figure(value, { decimals: 0 }).text} ${words.trade.unit.um}`
  }
  const text = resultText(characteristic, value)
  return `${text.value} ${text.unit}`
}
