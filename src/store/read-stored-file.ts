import { eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Store } from './open.ts'
import { storedFile } from './schema/stored-file.ts'

/** @throws AppError not-found `no-file` */
export function readStoredFile(
  store: Store,
  sha256: string,
): { readonly bytes: Buffer; readonly mediaType: string } {
  const found = store.db
    .select({ bytes: storedFile.bytes, mediaType: storedFile.mediaType })
    .from(storedFile)
    .where(eq(storedFile.sha256, sha256))
    .get()
  if (found === undefined) throw new AppError('not-found', 'no-file')
  return found
}
