import { join } from 'node:path'
import { projectRoot } from '../../src/project-root.ts'
import { alternate } from './tools/alternate.ts'
import { startBarePage } from './tools/bare-page.ts'
import type { Benchmark } from './tools/benchmark.ts'
import { fetchPage } from './tools/fetch-page.ts'
import { withScratchFolder } from './tools/scratch-folder.ts'
import { type Serving, serving } from './tools/serving.ts'

/** From the start of the process to the whole answer of the first page. */
async function firstPageMs(start: () => Promise<Serving>): Promise<number> {
  const startedAt = performance.now()
  const server = await start()
  try {
    await fetchPage(`${server.origin}/sign-in`)
    return performance.now() - startedAt
  } finally {
    await server.stop()
  }
}

export const benchmark: Benchmark = {
  name: 'start-to-first-page',
  unit: 'ms',
  peerName: 'Hono alone on @hono/node-server, one static page',
  run: () =>
    withScratchFolder(async (folder) => {
      const main = join(projectRoot(), '.build/run/main.js')
      const env = { RINGPROOF_DATA: join(folder, 'data'), RINGPROOF_PORT: '0' }
      // The first start of all, a warm-up, copies the invented workshop into the folder.
      const ours = () => firstPageMs(() => serving([main], { ...env, RINGPROOF_DEMO: 'on' }))
      const peer = () => firstPageMs(() => startBarePage(4000))
      return alternate({ ours, peer, rounds: 9, warmUpRounds: 2 })
    }),
}
