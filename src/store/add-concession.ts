import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Concession } from '../domain/concession.ts'
import { concessionRefusal } from '../domain/concession-refusal.ts'
import type { ParsedConcession } from '../domain/parse-concession.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { readEvidence } from './read-evidence.ts'
import { concession } from './schema/concession.ts'

/**
 * Records that a customer takes a result which doesn't keep its limit. Every rule is asked here,
 * inside the transaction: the result may have been measured again, or conceded by someone else.
 * @throws AppError not-found `no-work-order`; forbidden `not-inspector`, `worked-on-order`; conflict
 *   with the id of another refusal
 */
export function addConcession(
  store: Store,
  fresh: { readonly workOrderId: number; readonly asked: ParsedConcession; readonly by: User },
  actor: Actor,
): Concession {
  const { workOrderId, asked, by } = fresh
  return store.transact(() => {
    const evidence = readEvidence(store, workOrderId)
    const refusal = concessionRefusal({ evidence, user: by, asked })
    if (refusal !== undefined) {
      const isOfPerson = refusal === 'not-inspector' || refusal === 'worked-on-order'
      throw new AppError(isOfPerson ? 'forbidden' : 'conflict', refusal)
    }
    const { subjectKind, subjectId, characteristic, reason, customerReference } = asked
    const row = {
      workOrderId,
      subjectKind,
      subjectId,
      characteristic,
      reason,
      customerReference,
      byId: by.id,
      byName: by.displayName,
      at: actor.at,
    }
    const added = store.db.insert(concession).values(row).returning().get()
    const subject = evidence.workOrder.number
    addAudit(store, actor, { act: 'add-concession', subject, detail: added })
    return added
  })
}
