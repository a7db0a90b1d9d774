import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { fileHash } from './file-hash.ts'
import type { Store } from './open.ts'
import { storedFile } from './schema/stored-file.ts'

/** Stores bytes under their hash, once, inside the transaction of what refers to them. */
export function addStoredFile(
  store: Store,
  file: { readonly bytes: Buffer; readonly mediaType: string },
  actor: Actor,
): string {
  const sha256 = fileHash(file.bytes)
  const isKnown = eq(storedFile.sha256, sha256)
  if (store.db.select({ sha256: storedFile.sha256 }).from(storedFile).where(isKnown).get()) {
    return sha256
  }
  store.db
    .insert(storedFile)
    .values({ ...file, sha256, storedAt: actor.at })
    .run()
  return sha256
}
