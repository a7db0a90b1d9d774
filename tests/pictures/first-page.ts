import { spawnSync } from 'node:child_process'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import type { DemoServer } from '../support/demo-server.ts'
import { signIn } from '../support/sign-in.ts'

/** Wide enough for the sizes of the text to be told apart, small enough for README. */
const widthPx = 800

/**
 * The first page of the customer's newest certificate as PNG. No headless browser shows a PDF, so
 * pdftoppm draws it; undefined where that is not installed.
 */
export async function drawFirstPage({ origin, ask }: DemoServer): Promise<Buffer | undefined> {
  if (spawnSync('pdftoppm', ['-v']).error !== undefined) return undefined
  const customer = demoAccounts.find((one) => one.name === 'cora')!
  const { cookie } = await signIn(origin, customer.name, customer.password)
  // One whose seal held at the first test, so that a page shows what is usual.
  const number = ask(`SELECT number FROM certificate AS one WHERE customer_id = 1 AND 1 = (
    SELECT count(*) FROM static_test WHERE work_order_id = one.work_order_id) ORDER BY id DESC`)
  const url = `${origin}/certificates/${number}/document.pdf`
  const answer = await fetch(url, { headers: { cookie } })
  if (answer.status !== 200) throw new Error(`${url} answered ${answer.status}`)
  const scale = ['-scale-to-x', String(widthPx), '-scale-to-y', '-1']
  const drawn = spawnSync('pdftoppm', ['-png', '-singlefile', ...scale, '-'], {
    input: Buffer.from(await answer.arrayBuffer()),
    maxBuffer: 20_000_000,
  })
  if (drawn.status !== 0) throw new Error(`pdftoppm refused: ${drawn.stderr.toString()}`)
  return drawn.stdout
}
