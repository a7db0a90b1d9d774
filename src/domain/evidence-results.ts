import { concessionRefusal } from './concession-refusal.ts'
import { type CountedResult, countedResults } from './counted-results.ts'
import type { Evidence } from './evidence.ts'
import { type ShownResult, type ShownResultKind, shownResult } from './shown-result.ts'
import type { User } from './user.ts'

/** A result that counts, with all that speaks for it, and what the viewer may do about it. */
export type EvidenceResult = {
  readonly counted: CountedResult
  readonly shown: ShownResult
  readonly canConcede: boolean
}

/** What an inspector looks through: every result that counts for the release. */
export function evidenceResults(
  evidence: Evidence,
  user: Pick<User, 'id' | 'role' | 'isActive'>,
): readonly EvidenceResult[] {
  return countedResults(evidence).map((counted) => {
    const { subjectKind, subjectId } = counted
    const { characteristic } = counted.judged
    const shown = shownResult(evidence, shownKindOf(counted), subjectId)
    if (shown === undefined) throw new Error(`evidenceResults requires ${subjectKind} ${subjectId}`)
    const asked = { subjectKind, subjectId, characteristic }
    const canConcede = concessionRefusal({ evidence, user, asked }) === undefined
    return { counted, shown, canConcede }
  })
}

function shownKindOf({ subjectKind, judged }: CountedResult): ShownResultKind {
  if (subjectKind !== 'static-test') return subjectKind
  return judged.characteristic === 'static-drop' ? 'static-test-drop' : 'static-test-leak'
}
