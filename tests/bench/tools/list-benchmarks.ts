import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Listed } from './bench-cli.ts'
import type { Benchmark } from './benchmark.ts'

/** The benchmarks of a folder: each of its files but `run.ts` is one, and is named like it. */
export function listBenchmarks(folder: string): readonly Listed[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && file !== 'run.ts')
    .sort()
    .map((file) => {
      const name = file.slice(0, -3)
      return { name, load: () => load(name, join(folder, file)) }
    })
}

async function load(name: string, file: string): Promise<Benchmark> {
  const { benchmark } = (await import(pathToFileURL(file).href)) as { benchmark?: Benchmark }
  if (benchmark?.name !== name) {
    throw new Error(`${name}.ts requires an exported benchmark of its own name`)
  }
  return benchmark
}
