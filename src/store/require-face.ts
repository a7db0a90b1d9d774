import { and, eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import { faceKinds } from '../domain/seal.ts'
import type { Store } from './open.ts'
import { component } from './schema/component.ts'

/**
 * Refuses a component that is no face, or a face of another seal.
 * @throws AppError conflict `not-in-order`
 */
export function requireFace(store: Store, id: number, sealId: number): void {
  const isOfSeal = and(eq(component.id, id), eq(component.sealId, sealId))
  const kind = store.db.select({ kind: component.kind }).from(component).where(isOfSeal).get()?.kind
  if (!faceKinds.some((one) => one === kind)) throw new AppError('conflict', 'not-in-order')
}
