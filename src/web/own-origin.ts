import type { AppContext } from './context.ts'

/** Whether an origin is ours: the public address, or the one that this request came to. */
export function isOwnOrigin(c: AppContext, origin: string): boolean {
  return origin === c.var.shop.origin || origin === new URL(c.req.url).origin
}
