import { describe, expect, test } from 'vitest'
import { addAssembly } from '../../src/store/add-assembly.ts'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { addSpringCheck } from '../../src/store/add-spring-check.ts'
import { addWearTrack } from '../../src/store/add-wear-track.ts'
import { lastAssemblyOfSeal } from '../../src/store/last-assembly-of-seal.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { buildShop } from '../support/build-shop.ts'
import { actorOf, castAt } from '../support/cast.ts'
import { anotherOrder, freshCycle, workAndHandOver } from '../support/shop-steps.ts'
import { freshAssembly, freshSpring, freshTrack, stripAndAssemble } from '../support/strip-steps.ts'

function setUp() {
  const shop = buildShop()
  const { store, cast, workOrder } = shop
  const tess = actorOf(cast.tess)
  return {
    shop,
    track: (changes = {}) => addWearTrack(store, freshTrack(shop, changes), tess),
    spring: (changes = {}) => addSpringCheck(store, freshSpring(shop, changes), tess),
    assembly: (changes = {}) => addAssembly(store, freshAssembly(shop, changes), tess),
    evidence: () => readEvidence(store, workOrder.id),
    stage: () => requireWorkOrder(store, workOrder.number, cast.tess).stage,
  }
}

const by = { recordedByName: 'Tess Turner', recordedAt: castAt, replacedById: null }

describe('what is read on a stripped seal', () => {
  test('is kept whole, and says that an order just received is stripped', () => {
    const { shop, track, spring, assembly, evidence, stage } = setUp()
    expect(stage()).toBe('received')
    const kept = [track(), spring(), assembly()]
    expect(kept[0]).toMatchObject({ ...freshTrack(shop), ...by })
    expect(kept[1]).toMatchObject({ ...freshSpring(shop), ...by })
    expect(kept[2]).toMatchObject({ loadN: 108, loadFrom: 'spring-check', ...by })
    const { wearTracks, springChecks, assemblies } = evidence()
    expect([...wearTracks, ...springChecks, ...assemblies]).toEqual(kept)
    expect(stage()).toBe('stripped')
  })

  test('leaves an order that is further on where it stands', () => {
    const { shop, spring, stage } = setUp()
    addLapCycle(shop.store, freshCycle(shop), actorOf(shop.cast.tess))
    spring()
    expect(stage()).toBe('lapping')
  })

  test('is refused in quarantine: nobody said that the seal is clean', () => {
    const { shop, track, spring, assembly } = setUp()
    const { id: workOrderId } = anotherOrder(shop, { decontamination: 'not-stated' })
    for (const add of [track, spring, assembly]) {
      expect(() => add({ workOrderId })).toThrow('conflict: in-quarantine')
    }
    expect(readEvidence(shop.store, workOrderId)).toMatchObject({
      wearTracks: [],
      springChecks: [],
      assemblies: [],
      workOrder: { stage: 'received' },
    })
  })

  test('is refused once the order is handed over, and on a face of no such seal', () => {
    const { shop, track, spring, assembly } = setUp()
    const ring = shop.seal.components.find((one) => one.kind === 'spring')!.id
    expect(() => track({ componentId: ring })).toThrow('conflict: not-in-order')
    workAndHandOver(shop)
    for (const add of [track, spring, assembly]) expect(() => add()).toThrow('not-open')
  })

  test('is corrected once, within its order, with a reason, and both stay', () => {
    const { shop, track, spring, assembly, evidence } = setUp()
    const other = { workOrderId: anotherOrder(shop).id }
    for (const add of [track, spring, assembly]) {
      const wrong = add()
      const right = { replacesId: wrong.id, reason: 'misread' }
      expect(() => add({ ...right, ...other })).toThrow('not-in-order')
      expect(() => add({ ...right, reason: '' })).toThrow('CHECK')
      add(right)
      expect(() => add(right)).toThrow('already-replaced')
    }
    const { wearTracks, springChecks, assemblies } = evidence()
    for (const list of [wearTracks, springChecks, assemblies]) {
      expect(list.map((one) => one.replacedById)).toEqual([2, null])
    }
  })

  test('has lines of its own in the trail, which hold the records', () => {
    const { shop } = setUp()
    stripAndAssemble(shop, { workOrderId: shop.workOrder.id })
    const acts = listAudit(shop.store, { limit: 20 }).items.map((one) => one.act)
    for (const act of ['wear-track', 'spring-check', 'assembly']) {
      expect(acts).toEqual(expect.arrayContaining([`add-${act}`, `correct-${act}`]))
    }
    expect(verifyRecords(shop.store)).toEqual([])
    shop.store.raw.exec('DROP TRIGGER spring_check_no_update')
    shop.store.raw.exec('UPDATE spring_check SET working_load_n = 1 WHERE replaces_id IS NULL')
    expect(verifyRecords(shop.store)).toMatchObject([{ table: 'spring_check' }])
  })
})

describe('the last assembly of a seal', () => {
  test('is the newest standing one of it, and none of a later order', () => {
    const { shop, assembly } = setUp()
    const { store, workOrder } = shop
    expect(lastAssemblyOfSeal(store, workOrder)).toBe(undefined)
    const first = assembly({ designSource: 'drawing 12' })
    const right = assembly({ designSource: 'drawing 13', replacesId: first.id, reason: 'newer' })
    const second = anotherOrder(shop)
    expect(lastAssemblyOfSeal(store, second)).toEqual(right)
    assembly({ workOrderId: second.id, designSource: 'drawing 14' })
    expect(lastAssemblyOfSeal(store, second)?.designSource).toBe('drawing 14')
    expect(lastAssemblyOfSeal(store, workOrder)).toEqual(right)
  })
})
