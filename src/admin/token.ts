import { randomBytes } from 'node:crypto'
import { adminWords } from '../../views/words/en/admin.ts'
import { AppError } from '../domain/app-error.ts'
import { addToken } from '../store/add-token.ts'
import { findUserByName } from '../store/find-user-by-name.ts'
import { revokeToken } from '../store/revoke-token.ts'
import { secretHash } from '../store/secret-hash.ts'
import { operator, withStore } from './operator.ts'
import type { Options } from './options.ts'
import { UsageError } from './usage-error.ts'

/** As the column holds it. */
const labelLength = { max: 120 } as const

/** Makes a bearer token and gives it, once: the store keeps its hash alone. */
export function tokenAdd(options: Options): string {
  const { user, label } = requireBoth(options)
  const token = `rp_${randomBytes(32).toString('base64url')}`
  return withStore({ isNew: false }, (store) => {
    const found = findUserByName(store, user)
    if (found === undefined) throw new AppError('not-found', 'no-user')
    addToken(store, { userId: found.id, label, tokenHash: secretHash(token) }, operator())
    return token
  })
}

/** Ends a token. */
export function tokenRevoke(options: Options): string {
  const { user, label } = requireBoth(options)
  return withStore({ isNew: false }, (store) => {
    revokeToken(store, { userName: user, label }, operator())
    return adminWords.revoked(label, user)
  })
}

function requireBoth(options: Options): { user: string; label: string } {
  if (!options.user) throw new UsageError(adminWords.missing('--user'))
  if (!options.label) throw new UsageError(adminWords.missing('--label'))
  if (options.label.length > labelLength.max) {
    throw new UsageError(adminWords.tooLong('--label', labelLength.max))
  }
  return { user: options.user, label: options.label }
}
