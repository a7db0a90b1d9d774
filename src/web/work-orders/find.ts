import { AppError } from '../../domain/app-error.ts'
import { parseOrderNumber } from '../../domain/parse-order-number.ts'
import type { User } from '../../domain/user.ts'
import { listWorkOrders } from '../../store/list-work-orders.ts'
import type { Store } from '../../store/open.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'

/**
 * Where a typed or scanned text leads: to the order of that number, to the only order that answers
 * to it (a serial, a tag), else to the list of those that do.
 */
export function placeOf(
  store: Store,
  typed: string,
  asked: { readonly year: number; readonly user: User },
): string {
  const number = parseOrderNumber(typed, asked.year)
  if (number !== undefined && isOrder(store, number, asked.user)) return `/work-orders/${number}`
  const { items } = listWorkOrders(store, { q: typed, limit: 2 })
  const [only] = items
  if (only !== undefined && items.length === 1) return `/work-orders/${only.number}`
  return `/work-orders?${new URLSearchParams({ q: typed })}`
}

function isOrder(store: Store, number: string, user: User): boolean {
  try {
    requireWorkOrder(store, number, user)
    return true
  } catch (error) {
    if (error instanceof AppError && error.kind === 'not-found') return false
    throw error
  }
}
