import type { Actor } from '../domain/actor.ts'
import type { Finding, NewFinding } from '../domain/finding.ts'
import { addAudit } from './add-audit.ts'
import { addStoredFile } from './add-stored-file.ts'
import { listFindings } from './list-findings.ts'
import { moveToStrip } from './move-to-strip.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { finding } from './schema/finding.ts'

export type FreshFinding = Omit<NewFinding, 'photoSha256'> & {
  /** Null where none was taken. */
  readonly photo: { readonly bytes: Buffer; readonly mediaType: string } | null
  /** The photograph of the finding that it corrects doesn't go on with it. */
  readonly isPhotoTakenOut: boolean
}

/**
 * Records what is seen on a part, with its photograph; an order just received is stripped from then
 * on. A correction without a photograph keeps the one before, unless that is taken out: then it
 * stays with what was corrected.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` or `already-replaced` for
 *   what it replaces
 */
export function addFinding(store: Store, fresh: FreshFinding, actor: Actor): Finding {
  const recordedById = requireUserId(actor, 'addFinding')
  const { photo, isPhotoTakenOut, ...row } = fresh
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    const earlier = listFindings(store, order.id)
    if (fresh.replacesId !== null) requireReplaceable(earlier, fresh.replacesId)
    moveToStrip(store, order, actor)
    const kept = earlier.find((one) => one.id === fresh.replacesId)?.photoSha256 ?? null
    const before = isPhotoTakenOut ? null : kept
    const photoSha256 = photo === null ? before : addStoredFile(store, photo, actor)
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const inserted = store.db
      .insert(finding)
      .values({ ...row, photoSha256, ...recorded })
      .returning()
      .get()
    const added = { ...inserted, replacedById: null }
    const act = fresh.replacesId === null ? 'add-finding' : 'correct-finding'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
