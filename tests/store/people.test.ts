import { describe, expect, test } from 'vitest'
import { addSession } from '../../src/store/add-session.ts'
import { addSignInFailure } from '../../src/store/add-sign-in-failure.ts'
import { addToken } from '../../src/store/add-token.ts'
import { addUser } from '../../src/store/add-user.ts'
import { clearSignInFailures } from '../../src/store/clear-sign-in-failures.ts'
import { countSignInFailures } from '../../src/store/count-sign-in-failures.ts'
import { findSession } from '../../src/store/find-session.ts'
import { findUserByName } from '../../src/store/find-user-by-name.ts'
import { findUserByToken } from '../../src/store/find-user-by-token.ts'
import { listUsers } from '../../src/store/list-users.ts'
import { removeSession } from '../../src/store/remove-session.ts'
import { requireUser } from '../../src/store/require-user.ts'
import { revokeToken } from '../../src/store/revoke-token.ts'
import { setActive } from '../../src/store/set-active.ts'
import { setPassword } from '../../src/store/set-password.ts'
import { actorOf, castAt, castOf, castPassword, operator } from '../support/cast.ts'
import { dumpStore } from '../support/dump-store.ts'
import { openTestStore } from '../support/open-test-store.ts'

const later = '2026-11-26T09:00:00.000Z'
const hashOf = (sign: string) => sign.repeat(64)

function opened() {
  const store = openTestStore()
  return { store, cast: castOf(store) }
}

describe('users', () => {
  test('are found by name without regard to capitals, and only so with their hash', () => {
    const { store, cast } = opened()
    const found = findUserByName(store, 'TESS')
    expect(found).toEqual({ ...cast.tess, passwordHash: `plain ${castPassword('tess')}` })
    expect(findUserByName(store, 'nobody')).toBeUndefined()
    expect(requireUser(store, cast.tess.id)).toEqual(cast.tess)
    expect(JSON.stringify(listUsers(store))).not.toContain('plain')
    expect(() => requireUser(store, 99)).toThrow('not-found: no-user')
  })

  test('have each a name of their own', () => {
    const { store, cast } = opened()
    const again = { ...cast.mo, name: 'Tess', passwordHash: 'x' }
    expect(() => addUser(store, again, operator)).toThrow('conflict: name-taken')
  })

  test('of the role customer belong to a customer, and no others do', () => {
    const { store, cast } = opened()
    const customer = { ...cast.cora, name: 'x', customerId: null, passwordHash: 'x' }
    expect(() => addUser(store, customer, operator)).toThrow('CHECK constraint failed')
    const staff = { ...cast.tess, name: 'x', customerId: 1, passwordHash: 'x' }
    expect(() => addUser(store, staff, operator)).toThrow('CHECK constraint failed')
  })

  test('leave no trace of password or token in the audit trail', () => {
    const { store, cast } = opened()
    setPassword(store, { userId: cast.tess.id, passwordHash: 'very secret' }, operator)
    addToken(store, { userId: cast.tess.id, label: 'rig', tokenHash: hashOf('7') }, operator)
    addSession(store, { tokenHash: hashOf('8'), userId: 1, expiresAt: later }, operator)
    const trail = store.raw.prepare('SELECT group_concat(detail) FROM audit').pluck().get()
    expect(trail).toContain('rig')
    for (const secret of ['very secret', 'plain ', hashOf('7'), hashOf('8')]) {
      expect(trail).not.toContain(secret)
    }
  })
})

describe('a session', () => {
  test('tells who is signed in until it ends', () => {
    const { store, cast } = opened()
    const session = { tokenHash: hashOf('a'), userId: cast.tess.id, expiresAt: later }
    addSession(store, session, actorOf(cast.tess))
    expect(findSession(store, hashOf('a'), castAt)).toEqual(cast.tess)
    expect(findSession(store, hashOf('b'), castAt)).toBeUndefined()
    expect(findSession(store, hashOf('a'), '2026-11-26T08:59:59.999Z')).toEqual(cast.tess)
    expect(findSession(store, hashOf('a'), later)).toBeUndefined()
    store.raw.exec("UPDATE user SET is_active = 0 WHERE name = 'tess'") // behind setActive's back
    expect(findSession(store, hashOf('a'), castAt)).toBeUndefined()
  })

  test('ends with signing out, and signing out twice changes nothing more', () => {
    const { store, cast } = opened()
    addSession(store, { tokenHash: hashOf('a'), userId: cast.tess.id, expiresAt: later }, operator)
    removeSession(store, hashOf('a'), operator)
    expect(findSession(store, hashOf('a'), castAt)).toBeUndefined()
    const before = dumpStore(store)
    removeSession(store, hashOf('a'), operator)
    expect(dumpStore(store)).toBe(before)
  })

  test('ends for everyone but the one who sets a new password', () => {
    const { store, cast } = opened()
    const sessions = [
      ['a', cast.tess.id],
      ['b', cast.tess.id],
      ['c', cast.tom.id],
    ] as const
    for (const [sign, userId] of sessions) {
      addSession(store, { tokenHash: hashOf(sign), userId, expiresAt: later }, operator)
    }
    const change = { userId: cast.tess.id, passwordHash: 'new', keepTokenHash: hashOf('a') }
    setPassword(store, change, actorOf(cast.tess))
    const isIn = (sign: string) => findSession(store, hashOf(sign), castAt) !== undefined
    expect(['a', 'b', 'c'].map(isIn)).toEqual([true, false, true])
    expect(findUserByName(store, 'tess')?.passwordHash).toBe('new')
    setPassword(store, { userId: cast.tess.id, passwordHash: 'newer' }, operator)
    expect(['a', 'b', 'c'].map(isIn)).toEqual([false, false, true])
  })

  test('ends when the user is made inactive, and is not given to the inactive', () => {
    const { store, cast } = opened()
    const session = { tokenHash: hashOf('a'), userId: cast.tess.id, expiresAt: later }
    addSession(store, session, operator)
    addToken(store, { userId: cast.tess.id, label: 'rig', tokenHash: hashOf('t') }, operator)
    expect(setActive(store, { userId: cast.tess.id, isActive: false }, operator).isActive).toBe(
      false,
    )
    expect(findSession(store, hashOf('a'), castAt)).toBeUndefined()
    expect(findUserByToken(store, hashOf('t'))).toBeUndefined()
    expect(() => addSession(store, session, operator)).toThrow('not-found: no-user')
    setActive(store, { userId: cast.tess.id, isActive: true }, operator)
    expect(findSession(store, hashOf('a'), castAt)).toBeUndefined()
    expect(findUserByToken(store, hashOf('t'))).toEqual(cast.tess)
  })
})

describe('a token', () => {
  test('acts as its user until it is revoked by its label', () => {
    const { store, cast } = opened()
    const token = { userId: cast.tom.id, label: 'rig', tokenHash: hashOf('a') }
    addToken(store, token, operator)
    expect(findUserByToken(store, hashOf('a'))).toEqual(cast.tom)
    expect(findUserByToken(store, hashOf('b'))).toBeUndefined()
    const again = { ...token, tokenHash: hashOf('b') }
    expect(() => addToken(store, again, operator)).toThrow('conflict: label-taken')
    revokeToken(store, { userName: 'tom', label: 'rig' }, operator)
    expect(findUserByToken(store, hashOf('a'))).toBeUndefined()
    const gone = () => revokeToken(store, { userName: 'tom', label: 'rig' }, operator)
    expect(gone).toThrow('not-found: no-token')
    addToken(store, again, operator)
    expect(findUserByToken(store, hashOf('b'))).toEqual(cast.tom)
  })

  test('is not found for a stranger or under another name', () => {
    const { store } = opened()
    const revoke = (userName: string) => () =>
      revokeToken(store, { userName, label: 'x' }, operator)
    expect(revoke('nobody')).toThrow('not-found: no-user')
    expect(revoke('tess')).toThrow('not-found: no-token')
  })
})

describe('failed sign-ins', () => {
  const at = (minute: number) => ({ ...operator, at: `2026-11-25T09:${minute}:00.000Z` })
  const since = '2026-11-25T09:20:00.000Z'

  test('are counted by name and by address since an instant', () => {
    const { store } = opened()
    addSignInFailure(store, { name: 'tess', address: 'A' }, at(19))
    addSignInFailure(store, { name: 'TESS', address: 'B' }, at(20))
    addSignInFailure(store, { name: 'tom', address: 'A' }, at(21))
    addSignInFailure(store, { name: 'tom', address: 'C' }, at(22))
    const count = (name: string, address: string) =>
      countSignInFailures(store, { name, address, since })
    expect(count('tess', 'A')).toEqual({ byName: 1, byAddress: 1, lastAt: at(21).at })
    expect(count('tom', 'B')).toEqual({ byName: 2, byAddress: 1, lastAt: at(22).at })
    expect(count('ian', 'Z')).toEqual({ byName: 0, byAddress: 0, lastAt: null })
    clearSignInFailures(store, 'Tom')
    expect(count('tom', 'A')).toEqual({ byName: 0, byAddress: 0, lastAt: null })
  })

  test('are found by index, so that a flood of them stays cheap', () => {
    const { store } = opened()
    for (const column of ['name', 'address']) {
      const query = `EXPLAIN QUERY PLAN SELECT count(*) FROM sign_in_failure
        WHERE ${column} = 'x' AND at >= 'y'`
      const plan = JSON.stringify(store.raw.prepare(query).all())
      expect(plan).toContain(`sign_in_failure_by_${column}`)
    }
  })

  test('leave no line in the audit trail: a name may be a password in the wrong field', () => {
    const { store } = opened()
    const count = () => store.raw.prepare('SELECT count(*) FROM audit').pluck().get()
    const before = count()
    addSignInFailure(store, { name: 'my password', address: 'A' }, operator)
    expect(count()).toBe(before)
  })
})
