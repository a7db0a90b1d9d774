import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { startDemo } from '../support/demo-server.ts'
import { signIn } from '../support/sign-in.ts'
import { alternate } from './tools/alternate.ts'
import { startBarePage } from './tools/bare-page.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { fetchPage, keptConnection } from './tools/fetch-page.ts'

const windowMs = 700

/** Requests a second over one kept connection, each after the answer of the one before. */
async function requestsPerS(url: string, cookie: string): Promise<number> {
  const agent = keptConnection()
  await fetchPage(url, { agent, cookie })
  const startedAt = performance.now()
  let requestCount = 0
  let elapsedMs = 0
  while (elapsedMs < windowMs) {
    await fetchPage(url, { agent, cookie })
    requestCount++
    elapsedMs = performance.now() - startedAt
  }
  agent.destroy()
  return (requestCount * 1000) / elapsedMs
}

async function run(): Promise<Measured> {
  const demo = await startDemo()
  try {
    const inspector = demoAccounts.find((one) => one.role === 'inspector')!
    const { cookie } = await signIn(demo.origin, inspector.name, inspector.password)
    const number = demo.ask("SELECT number FROM work_order WHERE stage = 'handed-over'")
    const url = `${demo.origin}/work-orders/${number}/inspection`
    const bare = await startBarePage(await fetchPage(url, { cookie }))
    const ours = () => requestsPerS(url, cookie)
    const peer = () => requestsPerS(`${bare.origin}/`, cookie)
    return await alternate({ ours, peer, rounds: 7, warmUpRounds: 2 }).finally(bare.stop)
  } finally {
    await demo.stop()
  }
}

export const benchmark: Benchmark = {
  name: 'evidence-page',
  unit: 'requests/s',
  peerName: 'Hono alone on @hono/node-server, as many bytes from memory',
  run,
}
