import type { SealOrder } from '../../../views/seal-page.tsx'
import { certifiedFaces } from '../../domain/certified-face.ts'
import { certifiedMeasuredValues } from '../../domain/certified-measured-values.ts'
import { certifiedStaticTests } from '../../domain/certified-static-test.ts'
import type { Seal } from '../../domain/seal.ts'
import type { User } from '../../domain/user.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'
import { listCertificates } from '../../store/list-certificates.ts'
import type { Store } from '../../store/open.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { allWorkOrders } from './all-work-orders.ts'

/** A seal's orders, newest first, with what the viewer may see of each. */
export function sealOrders(store: Store, seal: Seal, viewer: User): readonly SealOrder[] {
  const { id: sealId, customerId } = seal
  return allWorkOrders(store, { customerId, sealId }).map((order): SealOrder => {
    const evidence = maySeeResults(viewer, order.stage) ? readEvidence(store, order.id) : null
    return {
      order,
      results:
        evidence === null
          ? null
          : {
              faces: certifiedFaces(evidence),
              staticTests: certifiedStaticTests(evidence),
              measuredValues: certifiedMeasuredValues(evidence),
            },
      certificates: listCertificates(store, { workOrderId: order.id }),
    }
  })
}
