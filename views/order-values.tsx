import type { Child, FC } from 'hono/jsx'
import { instrumentsOfValue } from '../src/domain/instruments-of-value.ts'
import type { JudgedValue } from '../src/domain/judged-evidence.ts'
import type { Component } from '../src/domain/seal.ts'
import { DataTable } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { secondResultText } from './figures/result-text.ts'
import { minuteText } from './figures/time-text.ts'
import { uncertainText } from './figures/uncertain-text.ts'
import { finishDetails } from './finish-details.ts'
import { Cell, limitLine, RecordedBy, ResultLink, Struck } from './order-record.tsx'
import { words } from './words/en.ts'

type Props = {
  readonly values: readonly JudgedValue[]
  readonly components: readonly Component[]
  readonly orderNumber: string
  /** Where a correction is begun; null where this person may record none. */
  readonly correctHref: string | null
  /** Not what was read on a face, while the seal stands in quarantine. */
  readonly canCorrectFaces: boolean
}

/** Every value read with an instrument, oldest first; what was replaced stays, struck. */
export const OrderValues: FC<Props> = (props) => {
  const w = words.measuredValues
  return (
    <section id="values" class="records" aria-labelledby="values-title">
      <div class="section-head">
        <h2 id="values-title">{w.sectionTitle}</h2>
      </div>
      {props.values.length === 0 ? <p class="soft">{w.none}</p> : <ValuesTable {...props} />}
    </section>
  )
}

const ValuesTable: FC<Props> = (props) => {
  const { values, correctHref, canCorrectFaces } = props
  const { columns, sectionTitle } = words.measuredValues
  const act = { label: words.workOrders.measured.act, kind: 'act', isLabelHidden: true } as const
  return (
    <DataTable
      caption={sectionTitle}
      isCaptionHidden
      columns={[
        { label: columns.what },
        { label: columns.verdict },
        { label: columns.result, kind: 'number' },
        { label: columns.limit },
        { label: columns.read },
        { label: columns.recorded },
        ...(correctHref === null ? [] : [act]),
      ]}
      rows={values.map((one) => ({
        mark: mark(one),
        cells: [
          ...valueCells(one, props),
          ...(correctHref === null
            ? []
            : [<CorrectValue one={one} href={correctHref} canCorrectFaces={canCorrectFaces} />]),
        ],
      }))}
    />
  )
}

function valueCells(one: JudgedValue, { components, orderNumber }: Props): Child[] {
  const { measured, judged, replacedBy, afterCycle } = one
  const { trade, workOrders: w } = words
  const isReplaced = replacedBy !== null
  const kind = components.find(({ id }) => id === measured.componentId)?.kind
  return [
    <Cell
      details={[
        kind === undefined ? null : trade.componentKind[kind],
        trade.condition[measured.condition],
        afterCycle === null ? null : words.lapping.afterCycle(afterCycle),
      ]}
    >
      {trade.characteristic[measured.characteristic]}
    </Cell>,
    isReplaced ? (
      <VerdictMark verdict="refused" word={w.replaced} />
    ) : (
      <VerdictMark verdict={judged.verdict} word={trade.verdict[judged.verdict]} />
    ),
    <Result measured={measured} orderNumber={orderNumber} isReplaced={isReplaced} />,
    limitLine(judged),
    <Read one={one} isReplaced={isReplaced} />,
    <RecordedBy record={measured} replacement={replacedBy} />,
  ]
}

const Result: FC<{
  measured: JudgedValue['measured']
  orderNumber: string
  isReplaced: boolean
}> = ({ measured, orderNumber, isReplaced }) => {
  const { characteristic, valueUm, uncertainty } = measured
  const first = uncertainText(characteristic, valueUm, uncertainty)
  const second = secondResultText(characteristic, valueUm)
  return (
    <Cell
      details={[
        second === undefined ? null : `${second.value} ${second.unit}`,
        <ResultLink
          orderNumber={orderNumber}
          kind="measured-value"
          id={measured.id}
          uncertainty={uncertainty}
          label={words.trade.characteristic[characteristic]}
          at={measured.recordedAt}
        />,
      ]}
    >
      <Struck isReplaced={isReplaced}>{`${first.value} ${first.unit}`}</Struck>
    </Cell>
  )
}

const Read: FC<{ one: JudgedValue; isReplaced: boolean }> = ({ one, isReplaced }) => {
  const { measured, faceByLog } = one
  const typed = measured.readings.map((one) => one.typed).join('; ')
  return (
    <Cell
      details={[
        instrumentsOfValue(measured)
          .map(({ number, name }) => `${number} ${name}`)
          .join(', '),
        finishDetails(measured, faceByLog).join(', '),
      ]}
    >
      <Struck isReplaced={isReplaced}>
        {words.measuredValues.readAs(typed, words.trade.unit[measured.unit])}
      </Struck>
    </Cell>
  )
}

const CorrectValue: FC<{ one: JudgedValue; href: string; canCorrectFaces: boolean }> = (props) => {
  const { one, href, canCorrectFaces } = props
  const w = words.workOrders
  const { id, characteristic, componentId, recordedAt } = one.measured
  if (one.replacedBy !== null || (componentId !== null && !canCorrectFaces)) return null
  const label = w.correctLabel(words.trade.characteristic[characteristic], minuteText(recordedAt))
  return (
    <a href={`${href}?replaces=${id}`} aria-label={label}>
      {w.correct}
    </a>
  )
}

/** As found, a worn part fails and is no news. */
function mark({ measured, judged, replacedBy }: JudgedValue): 'quiet' | 'stop' | undefined {
  if (replacedBy !== null) return 'quiet'
  return judged.verdict === 'fail' && measured.condition === 'as-left' ? 'stop' : undefined
}
