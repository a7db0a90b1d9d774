import type { FC } from 'hono/jsx'
import type { Evidence } from '../../src/domain/evidence.ts'
import { words } from '../words/en.ts'

/** The way to the combined view, where a survey or a worn track was recorded. */
export const AlignmentLink: FC<{
  evidence: Pick<Evidence, 'dialSurveys' | 'wearTracks' | 'workOrder'>
}> = ({ evidence }) => {
  const { dialSurveys, wearTracks, workOrder } = evidence
  const isSurveyed = dialSurveys.some((one) => one.end?.outcome === 'recorded')
  if (!isSurveyed && wearTracks.length === 0) return null
  return (
    <p>
      <a href={`/work-orders/${workOrder.number}/alignment`}>{words.alignment.link}</a>
    </p>
  )
}
