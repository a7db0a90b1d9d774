import type { Benchmark, ResultLine } from './benchmark.ts'
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
    const line = await measure(await one.load())
    print.out(JSON.stringify(line))
    lines.push(line)
  }
  print.out('')
  for (const row of resultTable(lines)) print.out(row)
  return 0
}

async function measure({ name, unit, peerName, run }: Benchmark): Promise<ResultLine> {
  const { value, peerValue } = await run()
  if (!(value > 0) || !(peerValue > 0)) {
    throw new RangeError(`${name} requires measurements above 0, got ${value} and ${peerValue}`)
  }
  const ratio = value / peerValue
  return {
    bench: name,
    value: short(value),
    unit,
    peer: peerName,
    peerValue: short(peerValue),
    ratio: short(ratio),
  }
}

/** Four digits: more would be noise. */
function short(value: number): number {
  return Number(value.toPrecision(4))
}
