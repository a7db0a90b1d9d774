import type { FC } from 'hono/jsx'
import type { Evidence } from '../../src/domain/evidence.ts'
import { words } from '../words/en.ts'

/** The way to the combined view, where a survey of the order was recorded. */
export const AlignmentLink: FC<{ evidence: Pick<Evidence, 'dialSurveys' | 'workOrder'> }> = ({
  evidence,
}) => {
  const { dialSurveys, workOrder } = evidence
  if (!dialSurveys.some((one) => one.end?.outcome === 'recorded')) return null
  return (
    <p>
      <a href={`/work-orders/${workOrder.number}/alignment`}>{words.alignment.link}</a>
    </p>
  )
}
