import type { MySeal } from '../../../views/my-seals-page.tsx'
import type { Stage } from '../../domain/stage.ts'
import { listCertificates } from '../../store/list-certificates.ts'
import { listEquipment } from '../../store/list-equipment.ts'
import { listSeals } from '../../store/list-seals.ts'
import type { Store } from '../../store/open.ts'
import { allWorkOrders } from './all-work-orders.ts'

/** A seal at one of these is not in the workshop, or no longer the workshop's concern. */
const gone: readonly Stage[] = ['dispatched', 'withdrawn']

/** A customer's seals with the newest order and all certificates of each. */
export function mySeals(store: Store, customerId: number | null): readonly MySeal[] {
  if (customerId === null) return []
  const orders = allWorkOrders(store, { customerId })
  const certificates = listCertificates(store, { customerId })
  const equipment = listEquipment(store, customerId)
  return listSeals(store, { customerId }).map((seal): MySeal => {
    const mine = orders.filter((one) => one.sealId === seal.id)
    const order = mine[0] ?? null
    return {
      seal,
      equipmentTag: equipment.find((one) => one.id === seal.equipmentId)?.tag ?? null,
      order,
      certificates: certificates
        .filter((one) => mine.some((of) => of.id === one.workOrderId))
        .map((one) => one.number),
      isAtWork: order !== null && !gone.includes(order.stage),
    }
  })
}
