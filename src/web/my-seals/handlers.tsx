import { MySealsPage } from '../../../views/my-seals-page.tsx'
import { SealPage } from '../../../views/seal-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import type { Seal } from '../../domain/seal.ts'
import { maySeeCustomer } from '../../domain/who-may-see.ts'
import { requireCustomer } from '../../store/require-customer.ts'
import { requireEquipment } from '../../store/require-equipment.ts'
import { requireSeal } from '../../store/require-seal.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'
import { mySeals } from './my-seals.ts'
import { sealOrders } from './seal-orders.ts'

export function listMySeals(c: AppContext): Promise<Response> {
  const seals = mySeals(c.var.shop.store, viewer(c).customerId)
  return sendPage(c, <MySealsPage frame={frameOf(c)} seals={seals} />)
}

export function showSeal(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const user = viewer(c)
  const seal = sealOf(c)
  const page = (
    <SealPage
      frame={frameOf(c)}
      seal={seal}
      customerName={requireCustomer(store, seal.customerId).name}
      equipment={seal.equipmentId === null ? null : requireEquipment(store, seal.equipmentId)}
      orders={sealOrders(store, seal, user)}
      isStaff={user.role !== 'customer'}
    />
  )
  return sendPage(c, page)
}

function sealOf(c: AppContext): Seal {
  const seal = requireSeal(c.var.shop.store, idOf(c.req.param('id'), 'no-seal'))
  if (!maySeeCustomer(viewer(c), seal.customerId)) throw new AppError('not-found', 'no-seal')
  return seal
}
