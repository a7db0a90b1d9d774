import type { MiddlewareHandler } from 'hono'
import { AppError } from '../domain/app-error.ts'
import type { AppEnv } from './context.ts'
import type { Route } from './route-table.ts'
import { SignedOut } from './signed-out.ts'

/** Lets through who the route table names; everyone else is refused before the handler runs. */
export function guard(route: Route): MiddlewareHandler<AppEnv> {
  return async (c, next) => {
    if (route.who !== 'public') {
      const user = c.var.user
      if (user === undefined) throw new SignedOut()
      if (route.who !== 'signed-in' && !route.who.includes(user.role)) {
        throw new AppError('forbidden', 'wrong-role')
      }
    }
    await next()
  }
}
