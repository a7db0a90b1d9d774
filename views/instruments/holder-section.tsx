import type { FC } from 'hono/jsx'
import type { InstrumentHolder } from '../../src/domain/instrument.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { DataTable } from '../components/data-table.tsx'
import { Field } from '../components/field.tsx'
import { minuteText } from '../figures/time-text.ts'
import { ownErrorOf } from '../own-error-of.ts'
import { instrumentSentences } from '../words/en/instruments.ts'
import { words } from '../words/en.ts'
import type { InstrumentForms } from './forms.ts'

/** Who holds an instrument, and who held it before. */
export const HolderSection: FC<{
  holders: readonly InstrumentHolder[]
  forms: InstrumentForms
}> = ({ holders, forms }) => {
  const w = words.instruments
  const [now, ...earlier] = holders
  return (
    <section id="holders" class="stack" aria-labelledby="holders-title">
      <div class="section-head">
        <h2 id="holders-title">{w.holderTitle}</h2>
      </div>
      {now === undefined ? (
        <p class="soft">{w.noHolder}</p>
      ) : (
        <p>
          {w.holderNow} <strong>{now.holder}</strong>
          <span class="soft"> · {w.by(now.byName, minuteText(now.at))}</span>
        </p>
      )}
      {earlier.length === 0 ? null : (
        <DataTable
          caption={w.holderCaption}
          columns={[
            { label: w.holderColumns.holder },
            { label: w.holderColumns.at },
            { label: w.holderColumns.by },
          ]}
          rows={earlier.map((one) => ({
            cells: [one.holder, <span class="when">{minuteText(one.at)}</span>, one.byName],
          }))}
        />
      )}
      {forms.instrument.withdrawnOn === null ? <HolderForm {...forms} /> : null}
    </section>
  )
}

const HolderForm: FC<InstrumentForms> = ({ instrument, formKey, typed, faults }) => {
  const w = words.instruments
  return (
    <details class="fold" open={faults.some((one) => one.field === 'holder')}>
      <summary>{w.handOn}</summary>
      <form method="post" action={`/instruments/${instrument.id}/holder`} class="fold-body">
        <input type="hidden" name="formKey" value={`${formKey}-holder`} />
        <Field
          name="holder"
          label={w.holder}
          value={typed.holder}
          isRequired
          {...ownErrorOf(faults, 'holder', instrumentSentences)}
        />
        <ButtonRow>
          <Button label={w.submitHolder} />
        </ButtonRow>
      </form>
    </details>
  )
}
