import type { FC } from 'hono/jsx'
import type { InstrumentUse } from '../../src/domain/instrument.ts'
import { Facts } from '../components/facts.tsx'
import { words } from '../words/en.ts'

/** The instruments as their labels stood on the day of use. */
export const InstrumentsSection: FC<{ instruments: readonly InstrumentUse[] }> = (props) => (
  <section aria-labelledby="instruments-title">
    <div class="section-head">
      <h2 id="instruments-title">{words.results.instrumentsTitle}</h2>
    </div>
    <Facts
      layout="rows"
      pairs={props.instruments.map((use) => ({
        label: `${use.number} ${use.name}`,
        value: <Standing use={use} />,
      }))}
    />
  </section>
)

const Standing: FC<{ use: InstrumentUse }> = ({ use }) => {
  const { results: w, trade } = words
  const { status, dueOn, certificateNumber, exception } = use
  const due = dueOn === null ? [] : [w.due(dueOn)]
  return (
    <>
      {[trade.calibrationStatus[status], ...due].join(', ')}
      <p class="cell-detail">{w.certificateOf(certificateNumber ?? w.noCertificate)}</p>
      {exception === undefined ? null : (
        <p class="cell-detail">{w.exception(exception.allowedByName, exception.reason)}</p>
      )}
    </>
  )
}
