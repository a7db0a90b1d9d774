import { AppError } from '../domain/app-error.ts'
import type { Certificate } from '../domain/certificate.ts'
import type { User } from '../domain/user.ts'
import { maySeeCustomer } from '../domain/who-may-see.ts'
import { findRevision } from './find-revision.ts'
import type { Store } from './open.ts'

/**
 * The newest revision, or the one asked for.
 * @throws AppError not-found `no-certificate`, also where the viewer is another customer
 */
export function requireCertificate(
  store: Store,
  number: string,
  viewer: User,
  revision?: number,
): Certificate {
  const found = findRevision(store, number, revision)
  if (found === undefined || !maySeeCustomer(viewer, found.customerId)) {
    throw new AppError('not-found', 'no-certificate')
  }
  return found
}
