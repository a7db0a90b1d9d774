import type { FC } from 'hono/jsx'
import type { Judged } from '../../src/domain/judged.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { improveText } from '../improve-text.ts'
import { incompleteText } from '../incomplete-text.ts'
import { JudgedPicture } from '../judged-picture.tsx'
import { words } from '../words/en.ts'

/** A result and its interval beside its limit, why it is not clear, and whence the limit. */
export const JudgedBar: FC<{ judged: Judged; uncertainty: Uncertainty | null }> = (props) => {
  const { judged, uncertainty } = props
  const { value, limit } = judged
  if (limit === null || value === null)
    return <p class="small soft">{words.trade.why[judged.why]}</p>
  const incomplete = incompleteText(judged, uncertainty)
  return (
    <>
      {isClear(judged) ? null : <p class="small">{words.trade.why[judged.why]}</p>}
      {judged.verdict === 'undecidable' ? <p class="small">{improveText(judged)}</p> : null}
      {incomplete === null ? null : <p class="small">{incomplete}</p>}
      <JudgedPicture judged={judged} uncertainty={uncertainty} />
      <p class="small soft">
        {limit.asWritten}. {words.trade.limitBasis[limit.basis]}: {limit.source}
      </p>
    </>
  )
}

function isClear({ why }: Judged): boolean {
  return why === 'within-limit' || why === 'beyond-limit'
}
