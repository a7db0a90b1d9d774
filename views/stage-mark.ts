import type { Stage } from '../src/domain/stage.ts'
import type { VerdictKind } from '../src/plots/verdict-shape.ts'

/** The sign beside a stage: done, sent back, or under way. */
export function stageMark(stage: Stage): VerdictKind {
  if (stage === 'released' || stage === 'dispatched') return 'pass'
  return stage === 'refused' || stage === 'withdrawn' ? 'refused' : 'open'
}
