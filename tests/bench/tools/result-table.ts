import type { ResultLine } from './benchmark.ts'

const columns = ['benchmark', 'ours', 'peer', 'unit', 'ours / peer', 'the peer is'] as const
/** Figures stand flush right. */
const isFigure = [false, true, true, false, true, false]

/** The table for people: a row a benchmark, under a head. */
export function resultTable(lines: readonly ResultLine[]): string[] {
  const rows = lines.map((one) => [
    one.bench,
    String(one.value),
    one.peerValue === null ? 'not available' : String(one.peerValue),
    one.unit,
    one.ratio === null ? '' : String(one.ratio),
    one.peer,
  ])
  const all = [[...columns], ...rows]
  const widths = columns.map((_, index) => Math.max(...all.map((row) => row[index]!.length)))
  return all.map((row) =>
    row
      .map((cell, at) => (isFigure[at] ? cell.padStart(widths[at]!) : cell.padEnd(widths[at]!)))
      .join('  ')
      .trimEnd(),
  )
}
