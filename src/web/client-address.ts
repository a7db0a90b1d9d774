import { getConnInfo } from '@hono/node-server/conninfo'
import type { AppContext } from './context.ts'

/** The address a request comes from; a request made inside a test has none. */
export function clientAddress(c: AppContext): string {
  try {
    return getConnInfo(c).remote.address ?? 'unknown'
  } catch {
    return 'unknown'
  }
}
