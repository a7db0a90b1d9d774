import { AppError } from '../../domain/app-error.ts'
import type { AppContext } from '../context.ts'
import { isOwnOrigin } from '../own-origin.ts'

/** A session's cookie acts here only for our own pages; a token needs no such proof. */
export function refuseForeignPage(c: AppContext): void {
  if (c.req.header('authorization') !== undefined) return
  const site = c.req.header('sec-fetch-site')
  const origin = c.req.header('origin')
  const isForeignSite = site !== undefined && site !== 'same-origin'
  const isForeignOrigin = origin !== undefined && !isOwnOrigin(c, origin)
  if (isForeignSite || isForeignOrigin) throw new AppError('forbidden', 'cross-site')
}
