import { adminWords } from '../../views/words/en/admin.ts'
import { AppError } from '../domain/app-error.ts'
import { findUserByName } from '../store/find-user-by-name.ts'
import { setPassword } from '../store/set-password.ts'
import { operator, withStore } from './operator.ts'
import type { Options } from './options.ts'
import { readPasswordHash } from './read-password-hash.ts'
import { UsageError } from './usage-error.ts'

/** Sets the password of who forgot it; their sessions end. */
export async function userPassword(options: Options): Promise<string> {
  const name = options.name?.trim() ?? ''
  if (name === '') throw new UsageError(adminWords.missing('--name'))
  const passwordHash = await readPasswordHash()
  return withStore({ isNew: false }, (store) => {
    const found = findUserByName(store, name)
    if (found === undefined) throw new AppError('not-found', 'no-user')
    setPassword(store, { userId: found.id, passwordHash }, operator())
    return adminWords.passwordSet(found.name)
  })
}
