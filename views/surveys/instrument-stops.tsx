import type { FC } from 'hono/jsx'
import { faultSentence } from '../words/en/faults.ts'
import { words } from '../words/en.ts'
import type { SurveyPageProps } from './page-props.ts'

/** Why an indicator of a survey may not be used now, and where an inspector is asked. */
export const InstrumentStops: FC<{
  page: Pick<SurveyPageProps, 'instrumentStops' | 'orderNumber'>
}> = ({ page: { instrumentStops, orderNumber } }) => {
  const { surveys: w, exceptions } = words
  if (instrumentStops.length === 0) return null
  return (
    <div class="faults" role="alert" id="instrument-stops">
      <h2 class="faults-title">{w.stopsTitle}</h2>
      <ul class="faults-list">
        {instrumentStops.map(({ fault, id, number }) => (
          <li>
            {faultSentence(fault)}{' '}
            <a href={`/work-orders/${orderNumber}/exceptions/new?instrument=${id}`}>
              {exceptions.askFor(number)}
            </a>
          </li>
        ))}
      </ul>
      <p>{w.stopsHint}</p>
    </div>
  )
}
