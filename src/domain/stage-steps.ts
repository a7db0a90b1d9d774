import { type Stage, stages } from './stage.ts'
import type { StageChange } from './work-order.ts'

export type StageStep = {
  readonly stage: Stage
  readonly state: 'done' | 'current' | 'to-come'
  /** When the order last came there; null where it has not. */
  readonly at: string | null
}

/**
 * The way of an order for its stage line: what it went through, where it stands, what is to come.
 * A stage that was passed over is left out. Refused stands after hand-over, with release still to
 * come; withdrawn is the end.
 * @param changes oldest first
 */
export function stageSteps(stage: Stage, changes: readonly StageChange[]): readonly StageStep[] {
  const cameAt = (one: Stage) => changes.findLast((change) => change.to === one)?.at ?? null
  const step = (one: Stage, state: StageStep['state']): StageStep => {
    return { stage: one, state, at: state === 'to-come' ? null : cameAt(one) }
  }
  const steps = stages.map((one) => step(one, stateOf(one, stage)))
  const kept = steps.filter((one) => one.state !== 'done' || one.at !== null)
  if (stage === 'withdrawn') {
    return [...kept.filter((one) => one.state === 'done'), step(stage, 'current')]
  }
  if (stage !== 'refused') return kept
  const done = kept.filter((one) => one.state === 'done')
  return [...done, step(stage, 'current'), ...kept.slice(done.length)]
}

function stateOf(one: Stage, stage: Stage): StageStep['state'] {
  if (stage === 'withdrawn') return 'done'
  const line: readonly Stage[] = stages
  const here = line.indexOf(stage === 'refused' ? 'handed-over' : stage)
  const index = line.indexOf(one)
  if (index === here) return stage === 'refused' ? 'done' : 'current'
  return index < here ? 'done' : 'to-come'
}
