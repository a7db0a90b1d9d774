import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { alternate } from './bench/tools/alternate.ts'
import { benchCli, type Listed } from './bench/tools/bench-cli.ts'
import type { Benchmark, Measured } from './bench/tools/benchmark.ts'
import { listBenchmarks } from './bench/tools/list-benchmarks.ts'

const folder = fileURLToPath(new URL('bench/', import.meta.url))

function fake(name: string, measured: Measured = { value: 3, peerValue: 1.5 }): Listed {
  const benchmark: Benchmark = {
    name,
    unit: 'ms',
    peerName: 'a plain loop',
    run: async () => measured,
  }
  return { name, load: async () => benchmark }
}

async function run(listed: readonly Listed[], asked: readonly string[]) {
  const out: string[] = []
  const err: string[] = []
  const code = await benchCli(listed, asked, {
    out: (line) => out.push(line),
    err: (line) => err.push(line),
  })
  return { code, out, err, json: out.filter((line) => line.startsWith('{')) }
}

describe('the benchmarks', () => {
  test('are each a file that exports a benchmark of its own name with a named peer', async () => {
    const listed = listBenchmarks(folder)
    expect(listed.length).toBeGreaterThanOrEqual(7)
    for (const one of listed) {
      const benchmark = await one.load()
      expect(benchmark.name).toBe(one.name)
      expect(benchmark.peerName).not.toBe('')
      expect(benchmark.unit).not.toBe('')
    }
  })

  test('print exactly the six fields in their order, a line a benchmark', async () => {
    const { code, json } = await run([fake('lap'), fake('rig')], [])
    expect(code).toBe(0)
    expect(json).toEqual([
      '{"bench":"lap","value":3,"unit":"ms","peer":"a plain loop","peerValue":1.5,"ratio":2}',
      '{"bench":"rig","value":3,"unit":"ms","peer":"a plain loop","peerValue":1.5,"ratio":2}',
    ])
  })

  test('print a table with a row a benchmark under its head', async () => {
    const { out } = await run([fake('lap'), fake('rig')], [])
    const table = out.slice(out.indexOf('') + 1)
    expect(table.map((row) => row.split(/\s{2,}/))).toEqual([
      ['benchmark', 'ours', 'peer', 'unit', 'ours / peer', 'the peer is'],
      ['lap', '3', '1.5', 'ms', '2', 'a plain loop'],
      ['rig', '3', '1.5', 'ms', '2', 'a plain loop'],
    ])
  })

  test('say that a peer is not available, and print the notes of a benchmark', async () => {
    const notes = ['12 of 14 answered', 'none wrong']
    const { out, json } = await run([fake('lap', { value: 3, peerValue: null, notes })], [])
    expect(json).toEqual([
      '{"bench":"lap","value":3,"unit":"ms","peer":"a plain loop","peerValue":null,"ratio":null}',
    ])
    expect(out.slice(1, 3)).toEqual(notes)
    expect(out.at(-1)).toMatch(/^lap +3 +not available +ms +a plain loop$/)
  })

  test('run alone when named', async () => {
    const { json } = await run([fake('lap'), fake('rig')], ['rig'])
    expect(json.map((line) => JSON.parse(line).bench)).toEqual(['rig'])
  })

  test('run none for an unknown name, but list what there is and end with 2', async () => {
    const { code, out, err } = await run([fake('lap'), fake('rig')], ['lap', 'tide'])
    expect({ code, out }).toEqual({ code: 2, out: [] })
    expect(err).toEqual(['no benchmark is named tide; there are:', '  lap', '  rig'])
  })

  test('refuse to print a measurement that is none', async () => {
    for (const value of [0, Number.NaN]) {
      await expect(run([fake('lap', { value, peerValue: 1 })], [])).rejects.toThrow(RangeError)
    }
  })

  test('end the program with 2 for an unknown name', () => {
    const args = ['node_modules/tsx/dist/cli.mjs', 'tests/bench/run.ts', 'tide']
    const cwd = fileURLToPath(new URL('..', import.meta.url))
    const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd, encoding: 'utf8' })
    expect(status).toBe(2)
    expect(stdout).toBe('')
    for (const { name } of listBenchmarks(folder)) expect(stderr).toContain(`  ${name}\n`)
  }, 20_000)

  test('take turns, drop the warm-up and give the medians', async () => {
    const order: string[] = []
    const from = (name: string, values: number[]) => () => {
      order.push(name)
      return values.shift()!
    }
    const measured = await alternate({
      ours: from('us', [900, 4, 1, 100]),
      peer: from('peer', [900, 3, 1, 2]),
      rounds: 3,
    })
    expect(measured).toEqual({ value: 4, peerValue: 2 })
    expect(order.join(' ')).toBe('peer us us peer peer us us peer')
  })
})
