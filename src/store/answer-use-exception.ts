import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { ParsedUseExceptionAnswer } from '../domain/parse-use-exception-answer.ts'
import type { UseException } from '../domain/use-exception.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireUseException } from './require-use-exception.ts'
import { useExceptionAnswer } from './schema/use-exception-answer.ts'

/**
 * Allows an instrument for an order until a day, or declines. Answered once, by an inspector who
 * did not ask.
 * @throws AppError not-found `no-use-exception`; forbidden `not-inspector`, `own-request`;
 *   conflict `already-answered` with `by`
 */
export function answerUseException(
  store: Store,
  fresh: ParsedUseExceptionAnswer & { readonly useExceptionId: number; readonly by: User },
  actor: Actor,
): UseException {
  const { useExceptionId, answer, validUntil, reason, by } = fresh
  return store.transact(() => {
    const asked = requireUseException(store, useExceptionId)
    if (by.role !== 'inspector' || !by.isActive) throw new AppError('forbidden', 'not-inspector')
    if (asked.askedById === by.id) throw new AppError('forbidden', 'own-request')
    if (asked.answer !== null) {
      throw new AppError('conflict', 'already-answered', { by: asked.answer.byName })
    }
    const row = { answer, validUntil, reason, byId: by.id, byName: by.displayName, at: actor.at }
    const added = store.db
      .insert(useExceptionAnswer)
      .values({ useExceptionId, ...row })
      .returning()
      .get()
    const subject = asked.workOrderNumber
    addAudit(store, actor, { act: 'answer-use-exception', subject, detail: added })
    return requireUseException(store, useExceptionId)
  })
}
