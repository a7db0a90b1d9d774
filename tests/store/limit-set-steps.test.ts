import { describe, expect, test } from 'vitest'
import type { LimitSetStep } from '../../src/domain/limit-set.ts'
import type { User } from '../../src/domain/user.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addLimitSetStep } from '../../src/store/add-limit-set-step.ts'
import { defaultLimitSet } from '../../src/store/default-limit-set.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { requireLimitSet } from '../../src/store/require-limit-set.ts'
import { setActive } from '../../src/store/set-active.ts'
import { buildLimit } from '../support/build-limit-set.ts'
import { approved, buildShop, newLimitSet, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'

function draftOf({ store, cast }: Shop, by: User = cast.mo) {
  const fresh = newLimitSet({ version: 2, writtenById: by.id, writtenByName: by.displayName })
  return addLimitSet(store, fresh, actorOf(by))
}

function take(shop: Shop, limitSetId: number, step: LimitSetStep['step'], by: User) {
  const fresh = { limitSetId, step, effectiveOn: '2026-11-25', reason: 'because', by }
  return addLimitSetStep(shop.store, fresh, actorOf(by))
}

describe('a limit set', () => {
  test('is approved with name, day and time, and the audit trail says so', () => {
    const shop = buildShop()
    const draft = draftOf(shop)
    expect(draft.steps).toEqual([])
    const set = take(shop, draft.id, 'approved', shop.cast.ian)
    expect(set.steps).toMatchObject([
      {
        step: 'approved',
        effectiveOn: '2026-11-25',
        byId: shop.cast.ian.id,
        byName: 'Ian Ives',
        at: '2026-11-25T09:00:00.000Z',
      },
    ])
    expect(requireLimitSet(shop.store, draft.id)).toEqual(set)
    const [line] = listAudit(shop.store, { subject: `limit-set ${draft.id}`, limit: 1 }).items
    expect(line).toMatchObject({ act: 'approve-limit-set', actor: 'Ian Ives' })
  })

  test('is not approved by who wrote it, but by another inspector', () => {
    const shop = buildShop()
    const draft = draftOf(shop, shop.cast.ian)
    expect(() => take(shop, draft.id, 'approved', shop.cast.ian)).toThrow('conflict: own-draft')
    expect(take(shop, draft.id, 'approved', shop.cast.ina).steps).toHaveLength(1)
  })

  test('is approved once, and neither approved nor retired after it is retired', () => {
    const shop = buildShop()
    const draft = draftOf(shop)
    const { ian, ina } = shop.cast
    take(shop, draft.id, 'approved', ian)
    expect(() => take(shop, draft.id, 'approved', ina)).toThrow('conflict: limit-set-approved')
    take(shop, draft.id, 'retired', ina)
    expect(() => take(shop, draft.id, 'retired', ian)).toThrow('conflict: limit-set-retired')
    expect(() => take(shop, draft.id, 'approved', ian)).toThrow('conflict: limit-set-retired')
    expect(requireLimitSet(shop.store, draft.id).steps.map((one) => one.step)).toEqual([
      'approved',
      'retired',
    ])
  })

  test('is approved by nobody but an inspector whose access stands', () => {
    const shop = buildShop()
    const draft = draftOf(shop)
    for (const by of [shop.cast.mo, shop.cast.tess, shop.cast.cora]) {
      expect(() => take(shop, draft.id, 'approved', by)).toThrow('forbidden: not-inspector')
    }
    setActive(shop.store, { userId: shop.cast.ian.id, isActive: false }, actorOf(shop.cast.mo))
    const gone = { ...shop.cast.ian, isActive: false }
    expect(() => take(shop, draft.id, 'approved', gone)).toThrow('forbidden: not-inspector')
    expect(() => take(shop, 99, 'approved', shop.cast.ina)).toThrow('not-found: no-limit-set')
  })

  test('with limits that tie stays a draft', () => {
    const shop = buildShop()
    const plain = (changes: object) => {
      const { id: _, limitSetId: __, ...limit } = buildLimit(changes)
      return limit
    }
    const limits = [plain({ faceMaterial: 'alumina' }), plain({ diameterUpToMm: 75 })]
    const { id } = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
    expect(() => take(shop, id, 'approved', shop.cast.ian)).toThrow('conflict: limits-tie')
    expect(requireLimitSet(shop.store, id).steps).toEqual([])
  })

  test('gets no further limit once it is approved', () => {
    const { store, cast } = buildShop()
    const { id } = approved(
      store,
      addLimitSet(store, newLimitSet({ version: 2 }), operator),
      cast.ian,
    )
    const columns = store.raw.pragma('table_info(limit_value)') as { name: string }[]
    const copied = columns.map(({ name }) => {
      if (name === 'id') return 'NULL'
      return name === 'limit_set_id' ? ':set' : name
    })
    const copy = store.raw.prepare(
      `INSERT INTO limit_value SELECT ${copied.join(', ')} FROM limit_value WHERE limit_set_id = 1`,
    )
    expect(() => copy.run({ set: id })).toThrow('limit_value is append-only')
    const draft = addLimitSet(store, newLimitSet({ version: 3 }), operator)
    copy.run({ set: draft.id })
    expect(requireLimitSet(store, draft.id).limits).toHaveLength(4)
  })

  test('that is retired or not in force yet is not what new orders take', () => {
    const shop = buildShop()
    const { store, limitSet, cast } = shop
    const gas = addLimitSet(store, newLimitSet({ name: 'Gas' }), operator)
    const later = { limitSetId: gas.id, effectiveOn: '2026-12-01', reason: '', by: cast.ian }
    addLimitSetStep(store, { ...later, step: 'approved' }, actorOf(cast.ian))
    expect(defaultLimitSet(store, '2026-11-30').id).toBe(limitSet.id)
    expect(defaultLimitSet(store, '2026-12-01').id).toBe(gas.id)
    take(shop, limitSet.id, 'retired', cast.ina)
    expect(() => defaultLimitSet(store, '2026-11-30')).toThrow('conflict: no-limit-set-yet')
  })
})
