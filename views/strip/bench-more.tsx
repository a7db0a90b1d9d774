import type { FC } from 'hono/jsx'
import { fittingKinds } from '../../src/domain/measured-family.ts'
import { TextAreaField } from '../components/text-area-field.tsx'
import { type InstrumentChoice, InstrumentField } from '../recording/instrument-field.tsx'
import { words } from '../words/en.ts'
import { type BenchTyped, benchProps } from './bench-fields.tsx'

/** Instrument and note; folded away while nothing stands in them. */
export const BenchMore: FC<{ typed: BenchTyped; choice: InstrumentChoice | null }> = (props) => {
  const { typed, choice } = props
  const w = words.wearTrack
  const { error, value } = benchProps(typed, 'instrumentId')
  const isUsed = value !== '' || error !== undefined || (typed.values.note ?? '') !== ''
  return (
    <section class="question">
      <details class="fold" open={isUsed}>
        <summary>{choice === null ? words.assembly.moreTitle : w.moreTitle}</summary>
        <div class="fold-body stack">
          {choice === null ? null : (
            <InstrumentField
              name="instrumentId"
              label={w.instrument}
              emptyLabel={w.noInstrument}
              choice={choice}
              kinds={fittingKinds.height}
              value={value}
              error={error}
            />
          )}
          <TextAreaField {...benchProps(typed, 'note')} label={w.note} rows={2} />
        </div>
      </details>
    </section>
  )
}
