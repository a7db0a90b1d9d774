import type { FC } from 'hono/jsx'
import type { Judged } from '../../src/domain/judged.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { JudgedPicture } from '../judged-picture.tsx'
import { words } from '../words/en.ts'

/** A result and its interval beside its limit, and where the limit comes from. */
export const JudgedBar: FC<{ judged: Judged; uncertainty: Uncertainty | null }> = (props) => {
  const { judged, uncertainty } = props
  const { value, limit } = judged
  if (limit === null || value === null)
    return <p class="small soft">{words.trade.why[judged.why]}</p>
  return (
    <>
      <JudgedPicture judged={judged} uncertainty={uncertainty} />
      <p class="small soft">
        {limit.asWritten}. {words.trade.limitBasis[limit.basis]}: {limit.source}
      </p>
    </>
  )
}
