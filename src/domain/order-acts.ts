import { AppError } from './app-error.ts'
import { heldInQuarantine } from './held-in-quarantine.ts'
import type { Role } from './role.ts'
import { openStages, type Stage, stageTransitions } from './stage.ts'
import type { WorkOrder } from './work-order.ts'

/** Moves made by hand; hand-over and the inspector's decision are acts of their own. */
export const handMoves = ['stripped', 'lapping', 'testing', 'dispatched'] as const
export type HandMove = (typeof handMoves)[number]

/** What a person of a role may do with an order where it stands. */
export type OrderActs = {
  readonly canRecord: boolean
  /** What presupposes an opened seal: not while nobody has said that it is clean. */
  readonly canRecordOpened: boolean
  readonly canStateDecontamination: boolean
  readonly canSeeEvidence: boolean
  readonly canWithdraw: boolean
  /** As long as nothing is measured. */
  readonly canAgreeRule: boolean
  readonly moves: readonly HandMove[]
}

/** A page offers these and no others. */
export function orderActs(
  order: Pick<WorkOrder, 'stage' | 'decontamination'>,
  role: Role,
): OrderActs {
  const { stage, decontamination } = order
  const next = stageTransitions[stage]
  const canRecord = role === 'technician' && openStages.includes(stage)
  return {
    canRecord,
    canRecordOpened: canRecord && decontamination !== 'not-stated',
    canStateDecontamination:
      role !== 'customer' && (openStages.includes(stage) || stage === 'handed-over'),
    canSeeEvidence: role === 'inspector' || role === 'manager',
    canAgreeRule: (role === 'inspector' || role === 'manager') && openStages.includes(stage),
    canWithdraw: next.includes('withdrawn') && mayMove(role, 'withdrawn'),
    moves: handMoves.filter(
      (to) => next.includes(to) && mayMove(role, to) && !heldInQuarantine(order, to),
    ),
  }
}

/**
 * @throws AppError forbidden `wrong-role`: the inspector's hand stays off the work that the
 *   inspector decides on; anyone of the staff may dispatch what is released
 */
export function requireMayMove(role: Role, to: Stage): void {
  if (!mayMove(role, to)) throw new AppError('forbidden', 'wrong-role')
}

function mayMove(role: Role, to: Stage): boolean {
  if (role === 'technician' || role === 'manager') return true
  return role === 'inspector' && to === 'dispatched'
}
