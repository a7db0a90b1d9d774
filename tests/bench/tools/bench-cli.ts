import type { Benchmark, Measured, ResultLine } from './benchmark.ts'
import { resultTable } from './result-table.ts'

/** A benchmark that is loaded only when it is asked for. */
export type Listed = { readonly name: string; readonly load: () => Promise<Benchmark> }

export type Printer = { readonly out: (line: string) => void; readonly err: (line: string) => void }

/**
 * Runs the named benchmarks, or all: a JSON line each as it ends, then the table.
 * @returns the exit code: 0 done, 2 for a name that is not in the list
 */
export async function benchCli(
  listed: readonly Listed[],
  asked: readonly string[],
  print: Printer,
): Promise<0 | 2> {
  const unknown = asked.filter((name) => !listed.some((one) => one.name === name))
  if (unknown.length > 0) {
    print.err(`no benchmark is named ${unknown.join(', ')}; there are:`)
    for (const { name } of listed) print.err(`  ${name}`)
    return 2
  }
  const lines: ResultLine[] = []
  for (const one of listed) {
    if (asked.length > 0 && !asked.includes(one.name)) continue
    const benchmark = await one.load()
    const measured = await benchmark.run()
    const line = lineOf(benchmark, measured)
    print.out(JSON.stringify(line))
    for (const note of measured.notes ?? []) print.out(note)
    lines.push(line)
  }
  print.out('')
  for (const row of resultTable(lines)) print.out(row)
  return 0
}

function lineOf({ name, unit, peerName }: Benchmark, { value, peerValue }: Measured): ResultLine {
  if (!(value > 0) || !(peerValue === null || peerValue > 0)) {
    throw new RangeError(`${name} requires measurements above 0, got ${value} and ${peerValue}`)
  }
  return {
    bench: name,
    value: short(value),
    unit,
    peer: peerName,
    peerValue: peerValue === null ? null : short(peerValue),
    ratio: peerValue === null ? null : short(value / peerValue),
  }
}

/** Four digits: more would be noise. */
function short(value: number): number {
  return Number(value.toPrecision(4))
}
