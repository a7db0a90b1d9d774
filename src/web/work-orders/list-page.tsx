import { WorkOrdersPage } from '../../../views/work-orders-page.tsx'
import { allStages } from '../../domain/stage.ts'
import { listCustomers } from '../../store/list-customers.ts'
import { listWorkOrders } from '../../store/list-work-orders.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'

const pageLength = 50

/** The list as its address asks for it; a filter that names nothing is no filter. */
export function sendList(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const customers = listCustomers(store)
  const q = c.req.query('q')?.trim().slice(0, 80) ?? ''
  const stage = allStages.find((one) => one === c.req.query('stage'))
  const customer = customers.find((one) => String(one.id) === c.req.query('customer'))
  const cursor = c.req.query('cursor') ?? ''
  const found = listWorkOrders(store, {
    limit: pageLength,
    ...(stage === undefined ? {} : { stage }),
    ...(customer === undefined ? {} : { customerId: customer.id }),
    ...(q === '' ? {} : { q }),
    ...(cursor === '' ? {} : { cursor }),
  })
  const page = (
    <WorkOrdersPage
      frame={frameOf(c)}
      lines={found.items}
      customers={customers}
      filter={{ q, stage: stage ?? '', customer: customer === undefined ? '' : `${customer.id}` }}
      isFirstPage={cursor === ''}
      nextCursor={found.nextCursor}
      today={c.var.shop.now().toISOString().slice(0, 10)}
    />
  )
  return sendPage(c, page)
}
