import type { Child, FC } from 'hono/jsx'
import { figure } from '../src/domain/figure.ts'
import type { Judged } from '../src/domain/judged.ts'
import type { JudgedTest } from '../src/domain/judged-evidence.ts'
import { testUncertainty } from '../src/domain/test-uncertainty.ts'
import { DataTable } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { durationText } from './figures/duration-text.ts'
import { numberText } from './figures/number-text.ts'
import { secondResultText } from './figures/result-text.ts'
import { minuteText } from './figures/time-text.ts'
import { uncertainText } from './figures/uncertain-text.ts'
import { Cell, limitLine, RecordedBy, ResultLink, Struck } from './order-record.tsx'
import { words } from './words/en.ts'

/** Every static test, oldest first, drop and leak rate each beside its limit. */
export const OrderTests: FC<{
  tests: readonly JudgedTest[]
  orderNumber: string
  correctHref: string | null
}> = ({ tests, orderNumber, correctHref }) => {
  const w = words.workOrders
  const m = w.measured
  if (tests.length === 0) return <p class="soft">{w.noTests}</p>
  return (
    <DataTable
      caption={w.testsTitle}
      isCaptionHidden
      columns={[
        { label: m.section },
        { label: m.drop },
        { label: m.leak },
        { label: m.held },
        { label: m.recorded },
        ...(correctHref === null
          ? []
          : [{ label: m.act, kind: 'act', isLabelHidden: true } as const]),
      ]}
      rows={tests.map((one) => ({
        mark: mark(one),
        cells: [
          ...testCells(one, orderNumber),
          ...(correctHref === null ? [] : [<CorrectTest one={one} href={correctHref} />]),
        ],
      }))}
    />
  )
}

function testCells(one: JudgedTest, orderNumber: string): Child[] {
  const { test, judged, replacedBy } = one
  const isReplaced = replacedBy !== null
  return [
    words.trade.section[test.section],
    ...judged.map((figure) => (
      <JudgedFigure test={test} judged={figure} orderNumber={orderNumber} isReplaced={isReplaced} />
    )),
    <Held test={test} isReplaced={isReplaced} />,
    <RecordedBy record={test} replacement={replacedBy} />,
  ]
}

const JudgedFigure: FC<{
  test: JudgedTest['test']
  judged: Judged
  orderNumber: string
  isReplaced: boolean
}> = ({ test, judged, orderNumber, isReplaced }) => {
  const { characteristic, value, verdict, why } = judged
  const { trade, workOrders: w } = words
  const uncertainty = testUncertainty(test, judged)
  const first = uncertainText(characteristic, value ?? 0, uncertainty)
  const second = secondResultText(characteristic, value ?? 0)
  return (
    <Cell
      details={[
        second === undefined ? '' : `${second.value} ${second.unit}`,
        verdict === 'open' ? trade.why[why] : limitLine(judged),
        isReplaced ? (
          <VerdictMark verdict="refused" word={w.replaced} />
        ) : (
          <VerdictMark verdict={verdict} word={trade.verdict[verdict]} />
        ),
        <ResultLink
          orderNumber={orderNumber}
          kind={characteristic === 'static-drop' ? 'static-test-drop' : 'static-test-leak'}
          id={test.id}
          uncertainty={uncertainty}
          label={trade.characteristic[characteristic]}
          at={test.recordedAt}
        />,
      ]}
    >
      <Struck isReplaced={isReplaced}>{`${first.value} ${first.unit}`}</Struck>
    </Cell>
  )
}

const Held: FC<{ test: JudgedTest['test']; isReplaced: boolean }> = ({ test, isReplaced }) => {
  const { unit, leakPlace } = words.trade
  const { startPressure, endPressure, pressureUnit } = test.typed
  return (
    <Cell
      details={[
        `${startPressure} → ${endPressure} ${pressureUnit}`,
        volumeText(test, unit.l),
        test.leakPlace === null ? null : words.staticTests.leaksAt(leakPlace[test.leakPlace]),
      ]}
    >
      <Struck isReplaced={isReplaced}>{durationText(test.durationS)}</Struck>
    </Cell>
  )
}

const CorrectTest: FC<{ one: JudgedTest; href: string }> = ({ one, href }) => {
  const w = words.workOrders
  if (one.replacedBy !== null) return null
  const { test } = one
  const label = w.correctLabel(words.trade.section[test.section], minuteText(test.recordedAt))
  return (
    <a href={`${href}?replaces=${test.id}`} aria-label={label}>
      {w.correct}
    </a>
  )
}

function mark({ judged, replacedBy }: JudgedTest): 'quiet' | 'stop' | undefined {
  if (replacedBy !== null) return 'quiet'
  return judged.some((one) => one.verdict === 'fail') ? 'stop' : undefined
}

/** A computed volume to four digits, with how it was found. */
function volumeText({ volumeL, expansion }: JudgedTest['test'], litre: string): string {
  if (expansion === null) return `${numberText(volumeL)} ${litre}`
  return words.staticTests.expansion.found(`${figure(volumeL, { digits: 4 }).text} ${litre}`)
}
