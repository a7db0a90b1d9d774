import type { FC } from 'hono/jsx'
import type { Evidence } from '../../src/domain/evidence.ts'
import type { ReadFaceHeight } from '../../src/domain/face-heights.ts'
import { ButtonLink } from '../components/button-link.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { OrderStrip } from '../order-strip.tsx'
import { words } from '../words/en.ts'
import { FaceHeights } from './face-heights.tsx'
import { stripActs } from './strip-acts.ts'

/** What else is read on the strip bench: tracks, springs, heights, and the assembly. */
export const StripMore: FC<{
  evidence: Evidence
  records: Parameters<typeof OrderStrip>[0]['records']
  heights: readonly ReadFaceHeight[]
  /** A technician, while the order is open and not in quarantine. */
  mayRecord: boolean
}> = ({ evidence, records, heights, mayRecord }) => {
  const base = `/work-orders/${evidence.workOrder.number}`
  const height = `${base}/measured-values/new?characteristic=face-height`
  return (
    <>
      {mayRecord ? (
        <ButtonRow>
          {stripActs.map(([place, label]) => (
            <ButtonLink href={`${base}/${place}/new`} label={label} size="large" />
          ))}
          <ButtonLink href={height} label={words.measuredValues.act.height} size="large" />
        </ButtonRow>
      ) : null}
      <FaceHeights heights={heights} />
      <OrderStrip evidence={evidence} records={records} correctHref={mayRecord ? base : null} />
    </>
  )
}
