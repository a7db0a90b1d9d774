import type { AppContext } from './context.ts'
import { isOwnOrigin } from './own-origin.ts'

/**
 * Where to come back to after a detour: the address asked for with all its questions, or, where a
 * form was posted, the page it was drawn on; `/` where that is not known.
 */
export function returnPlace(c: AppContext): string {
  const isAsked = c.req.method === 'GET'
  const address = isAsked ? c.req.url : c.req.header('referer')
  if (address === undefined || !URL.canParse(address)) return '/'
  const { origin, pathname, search } = new URL(address)
  return isAsked || isOwnOrigin(c, origin) ? `${pathname}${search}` : '/'
}
