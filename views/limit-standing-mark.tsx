import type { FC } from 'hono/jsx'
import type { LimitSet } from '../src/domain/limit-set.ts'
import type { LimitSetStanding } from '../src/domain/limit-set-standing.ts'
import type { VerdictKind } from '../src/plots/verdict-shape.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { words } from './words/en.ts'

const signs: Readonly<Record<LimitSetStanding, VerdictKind | null>> = {
  draft: 'missing',
  approved: null,
  'in-force': 'pass',
  replaced: null,
  retired: null,
}

/** How a set stands, and since or until when. */
export const LimitStandingMark: FC<{
  standing: LimitSetStanding
  set: Pick<LimitSet, 'steps'>
}> = ({ standing, set }) => {
  const w = words.limitSets
  const day = dayOf(standing, set)
  const word = w.standing[standing]
  const sign = signs[standing]
  return (
    <>
      {sign === null ? <span>{word}</span> : <VerdictMark verdict={sign} word={word} />}
      {day === undefined ? null : <p class="cell-detail">{w.from(day)}</p>}
    </>
  )
}

function dayOf(standing: LimitSetStanding, { steps }: Pick<LimitSet, 'steps'>): string | undefined {
  if (standing === 'draft' || standing === 'replaced') return undefined
  const step = standing === 'retired' ? 'retired' : 'approved'
  return steps.find((one) => one.step === step)?.effectiveOn
}
