import type { Actor } from '../domain/actor.ts'
import type { StatedRule } from '../domain/agreed-rule.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireUserId } from './require-user-id.ts'
import { agreedRule } from './schema/agreed-rule.ts'

/** Whose results a rule is agreed for. */
export type RuleOf =
  | { readonly customerId: number }
  | { readonly workOrderId: number; readonly copiedFromId?: number }

/** Adds a rule with its audit line, inside the transaction that acts on it. */
export function addAgreedRule(
  store: Store,
  fresh: { readonly of: RuleOf; readonly stated: StatedRule; readonly subject: string },
  actor: Actor,
): void {
  const { rule, probability, reference } = fresh.stated
  const row = {
    customerId: null,
    workOrderId: null,
    copiedFromId: null,
    ...fresh.of,
    rule,
    probability,
    reference,
    byId: requireUserId(actor, 'addAgreedRule'),
    byName: actor.name,
    at: actor.at,
  }
  const added = store.db.insert(agreedRule).values(row).returning().get()
  addAudit(store, actor, { act: 'agree-rule', subject: fresh.subject, detail: added })
}
