import { type Serving, serving } from './serving.ts'

/**
 * The peer of our server: Hono alone on the same adapter, which answers every address with one
 * page of so many bytes. Handed to Node as text, so that no loader stands before it.
 */
const program = `
import { Hono } from 'hono'
import { serve } from '@hono/node-server'
const page = 'x'.repeat(Number(process.argv[1]))
const app = new Hono()
app.get('*', (c) => c.html(page))
serve({ fetch: app.fetch, hostname: '127.0.0.1', port: 0 }, ({ port }) => {
  process.stdout.write('http://127.0.0.1:' + port + '\\n')
})
`

export function startBarePage(byteCount: number): Promise<Serving> {
  return serving(['--input-type=module', '--eval', program, '--', String(byteCount)])
}
