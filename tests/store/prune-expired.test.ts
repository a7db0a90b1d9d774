import { expect, test } from 'vitest'
import { addSession } from '../../src/store/add-session.ts'
import { addSignInFailure } from '../../src/store/add-sign-in-failure.ts'
import { findSession } from '../../src/store/find-session.ts'
import { pruneExpired } from '../../src/store/prune-expired.ts'
import { operator } from '../support/cast.ts'
import { fillShop } from '../support/fill-shop.ts'

const none = { sessions: 0, answers: 0, signInFailures: 0 }

test('what has had its time is thrown away, at its border and not before', () => {
  const { store } = fillShop()
  const expiresAt = '2026-11-25T12:00:00.000Z'
  addSession(store, { tokenHash: 'a'.repeat(64), userId: 1, expiresAt }, operator)
  addSignInFailure(store, { name: 'tess', address: 'A' }, operator)
  expect(pruneExpired(store, '2026-11-25T11:59:59.999Z')).toEqual(none)
  expect(pruneExpired(store, expiresAt)).toEqual({ ...none, sessions: 1 })
  expect(findSession(store, 'a'.repeat(64), operator.at)).toBeUndefined()
  expect(pruneExpired(store, '2026-11-26T09:00:00.000Z')).toEqual(none)
  expect(pruneExpired(store, '2026-11-26T09:00:00.001Z')).toEqual({ ...none, signInFailures: 1 })
})

test('records are never thrown away', () => {
  const { store } = fillShop()
  const count = () =>
    ['audit', 'flatness_reading', 'certificate', 'work_order', 'user'].map((table) =>
      store.raw.prepare(`SELECT count(*) FROM ${table}`).pluck().get(),
    )
  const before = count()
  pruneExpired(store, '2099-01-01T00:00:00.000Z')
  expect(count()).toEqual(before)
})
