import type { PhotoOutcome } from './photo-outcome.ts'

const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b)
const quantile = (values: readonly number[], share: number) =>
  sorted(values)[Math.min(values.length - 1, Math.floor(share * values.length))] ?? Number.NaN
const percent = (part: number, whole: number) =>
  whole === 0 ? 'none' : `${((100 * part) / whole).toFixed(0)} % (${part}/${whole})`

/** A figure, the bar it is held against, and whether it is reached; a bar may be missing. */
interface Row {
  readonly figure: string
  readonly value: string
  readonly bar: string
  readonly isReached: boolean | null
}

const row = (figure: string, value: string, bar = '', isReached: boolean | null = null): Row => {
  return { figure, value, bar, isReached }
}

const share = (figure: string, part: number, whole: number, least: number): Row =>
  row(
    figure,
    percent(part, whole),
    `>= ${100 * least} %`,
    whole === 0 ? null : part / whole >= least,
  )

const most = (figure: string, value: number, limit: number): Row =>
  row(figure, value.toFixed(3), `<= ${limit}`, value <= limit)

function answeredRows(category: 'core' | 'hard', all: readonly PhotoOutcome[]): Row[] {
  const answered = all.filter((one) => one.kind === 'answered')
  const within = answered.filter(({ error, of }) => {
    const allowed = category === 'core' ? Math.max(0.1, 0.05 * of.pvLS) : 0.15
    return Math.abs(error) <= allowed
  }).length
  const covered = answered.filter(({ error, expanded }) => Math.abs(error) <= expanded).length
  const isCore = category === 'core'
  const rows = [
    share('answered', answered.length, all.length, isCore ? 0.8 : 0.35),
    share(
      isCore ? 'within max(0.1, 5 %)' : 'within 0.15',
      within,
      answered.length,
      isCore ? 0.95 : 0.85,
    ),
    share('U covers', covered, answered.length, isCore ? 0.93 : 0.88),
  ]
  const errors = answered.map((one) => one.error)
  const sizes = errors.map(Math.abs)
  const worst = row('worst error', Math.max(0, ...sizes).toFixed(3))
  if (!isCore || errors.length === 0) return [...rows, worst]
  return [
    ...rows,
    most('median error', quantile(sizes, 0.5), 0.03),
    most('mean error, its size', Math.abs(errors.reduce((a, b) => a + b, 0) / errors.length), 0.02),
    most(
      'median U',
      quantile(
        answered.map((one) => one.expanded),
        0.5,
      ),
      0.12,
    ),
    worst,
    ...foundRows(all),
  ]
}

/** The same pictures without a click: only those whose edges were found can be answered. */
function foundRows(all: readonly PhotoOutcome[]): Row[] {
  const found = all.flatMap(({ byFound, of }) => (byFound === null ? [] : [{ ...byFound, of }]))
  const within = found.filter(({ error, of }) => Math.abs(error) <= Math.max(0.1, 0.05 * of.pvLS))
  const covered = found.filter(({ error, expanded }) => Math.abs(error) <= expanded)
  const sizes = found.map(({ error }) => Math.abs(error))
  return [
    row('by found edges: answered', percent(found.length, all.length)),
    row('by found edges: within max(0.1, 5 %)', percent(within.length, found.length)),
    row('by found edges: U covers', percent(covered.length, found.length)),
    row('by found edges: median error', quantile(sizes, 0.5).toFixed(3)),
    row('by found edges: worst error', Math.max(0, ...sizes).toFixed(3)),
  ]
}

function maybeRows(all: readonly PhotoOutcome[]): Row[] {
  const answered = all.filter((one) => one.kind === 'answered')
  const within = answered.filter(
    ({ error, expanded }) => Math.abs(error) <= Math.max(expanded, 0.1),
  )
  return [share('answers within max(U, 0.1)', within.length, answered.length, 1)]
}

function refuseRows(all: readonly PhotoOutcome[]): Row[] {
  const wrongly = all.filter(({ kind, of, isStepSeen }) => {
    if (kind !== 'answered' || of.expect === 'either') return false
    return !(of.why.includes('step') && isStepSeen)
  })
  const names = wrongly.map((one) => `${one.of.id} ${one.of.why}`).join(', ')
  return [row('answered wrongly', `${wrongly.length} ${names}`.trim(), '0', wrongly.length === 0)]
}

function allRows(all: readonly PhotoOutcome[]): Row[] {
  const failed = all.filter((one) => one.kind === 'failed')
  const times = all.filter((one) => one.kind !== 'failed').map((one) => one.ms / 1000)
  const found = all.filter((one) => one.edgeError !== null)
  const near = (limit: number) => found.filter((one) => (one.edgeError as number) < limit).length
  const edgeMs = all.map((one) => one.edgeMs)
  return [
    row(
      'exceptions',
      `${failed.length} ${failed.map((one) => one.reason).join('; ')}`.trim(),
      '0',
      failed.length === 0,
    ),
    most('seconds, median', quantile(times, 0.5), 1.5),
    most('seconds, worst', Math.max(0, ...times), 10),
    row('edges found by itself, within 1 % R', percent(near(0.01), all.length)),
    row('edges found, off by more than 2 % R', String(found.length - near(0.02))),
    row('edges, ms, median', quantile(edgeMs, 0.5).toFixed(0)),
  ]
}

/** The figures of a set of pictures beside the bars they are held against, in lines. */
export function photoBars(title: string, outcomes: readonly PhotoOutcome[]): string[] {
  const of = (category: string) => outcomes.filter((one) => one.of.category === category)
  const sections: [string, Row[]][] = [
    ['core', answeredRows('core', of('core'))],
    ['hard', answeredRows('hard', of('hard'))],
    ['maybe', maybeRows(of('maybe'))],
    ['refuse', refuseRows(of('refuse'))],
    ['all', allRows(outcomes)],
  ]
  const lines = sections.flatMap(([name, rows]) =>
    (name !== 'all' && of(name).length === 0 ? [] : rows).map(
      ({ figure, value, bar, isReached }) => {
        const mark = isReached === null ? '' : isReached ? 'reached' : 'MISSED'
        const cells = [name.padEnd(7), figure.padEnd(36), value.padEnd(16), bar.padEnd(10), mark]
        return cells.join(' ').trimEnd()
      },
    ),
  )
  return ['', `${title}, ${outcomes.length} pictures`, ...lines]
}
