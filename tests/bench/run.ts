import { fileURLToPath } from 'node:url'
import buildOnce from '../support/build-once.ts'
import { benchCli } from './tools/bench-cli.ts'
import { listBenchmarks } from './tools/list-benchmarks.ts'

const here = fileURLToPath(new URL('.', import.meta.url))
// What is measured is what `npm start` runs: the build, brought up to date before the first.
const listed = listBenchmarks(here).map((one) => ({
  ...one,
  load: () => {
    buildOnce()
    return one.load()
  },
}))
process.exitCode = await benchCli(listed, process.argv.slice(2), {
  out: (line) => process.stdout.write(`${line}\n`),
  err: (line) => process.stderr.write(`${line}\n`),
})
