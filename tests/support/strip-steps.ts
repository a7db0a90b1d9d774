import type { Assembly, NewAssembly } from '../../src/domain/assembly.ts'
import type { CompleteSpringCheck } from '../../src/domain/complete-spring-check.ts'
import type { CompleteWearTrack } from '../../src/domain/complete-wear-track.ts'
import type { SpringCheck } from '../../src/domain/spring-check.ts'
import type { WearTrack } from '../../src/domain/wear-track.ts'
import { addAssembly } from '../../src/store/add-assembly.ts'
import { addSpringCheck } from '../../src/store/add-spring-check.ts'
import { addWearTrack } from '../../src/store/add-wear-track.ts'
import { buildAssembly } from './build-assembly.ts'
import type { Shop } from './build-shop.ts'
import { buildSpringCheck } from './build-spring-check.ts'
import { buildWearTrack } from './build-wear-track.ts'
import { actorOf } from './cast.ts'

type Kept = {
  readonly id: number
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

/** A worn track of the rotating face, ready to be stored. */
export function freshTrack(shop: Shop, changes: Partial<WearTrack> = {}): CompleteWearTrack {
  const { workOrder, seal } = shop
  const componentId = seal.components.find((one) => one.kind === 'rotating-face')!.id
  return fresh(buildWearTrack({ workOrderId: workOrder.id, componentId, ...changes }))
}

/** Six springs of 3 N/mm, ready to be stored. */
export function freshSpring(shop: Shop, changes: Partial<SpringCheck> = {}): CompleteSpringCheck {
  return fresh(buildSpringCheck({ workOrderId: shop.workOrder.id, ...changes }))
}

/** An assembly at 14 mm, ready to be stored. */
export function freshAssembly(shop: Shop, changes: Partial<Assembly> = {}): NewAssembly {
  return fresh(buildAssembly({ workOrderId: shop.workOrder.id, ...changes }))
}

/** A worn track, springs and an assembly of an order, each corrected once, by Tess. */
export function stripAndAssemble(shop: Shop, of: { readonly workOrderId: number }): void {
  const { store, cast } = shop
  const tess = actorOf(cast.tess)
  const track = addWearTrack(store, freshTrack(shop, of), tess)
  const read = { trackWidths: [{ mm: 4.1, typed: '4.10' }], movementUm: 150 }
  const offset = { offset: { mm: 0.3, typed: '0.3' }, offsetHour: 4 }
  const again = { ...of, replacesId: track.id, reason: 'edge of the track misread' }
  addWearTrack(store, freshTrack(shop, { ...again, ...read, ...offset }), tess)
  const spring = addSpringCheck(store, freshSpring(shop, of), tess)
  const right = { ...of, replacesId: spring.id, reason: 'five springs, not six' }
  const five = { springsCount: 5, workingLoadN: 90, loadPerMmN: 15 }
  addSpringCheck(store, freshSpring(shop, { ...right, ...five }), tess)
  const built = addAssembly(store, freshAssembly(shop, of), tess)
  const setScrews = [{ name: 'M6', quantityCount: 4, torqueNm: 9, designTorqueNm: 10 }]
  const design = { setScrews, torqueTolerancePercent: 15, designSource: 'drawing 12 B' }
  const torqued = { ...of, replacesId: built.id, reason: 'torques added' }
  addAssembly(store, freshAssembly(shop, { ...torqued, ...design }), tess)
}

function fresh<T extends Kept>(record: T): Omit<T, keyof Kept> {
  const {
    id: _1,
    recordedById: _2,
    recordedByName: _3,
    recordedAt: _4,
    replacedById: _5,
    ...rest
  } = record
  return rest
}
