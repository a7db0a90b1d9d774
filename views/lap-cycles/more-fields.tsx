import type { FC } from 'hono/jsx'
import { CheckField } from '../components/check-field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { words } from '../words/en.ts'
import { LapFigureField, type LapTyped, lapFieldProps } from './fields.tsx'

const folded = ['durationMin', 'loadKg', 'plateSagUm', 'plateDiameterMm'] as const

/** What is written down less often; folded away while nothing stands in it. */
export const LapMoreFields: FC<{ typed: LapTyped }> = ({ typed }) => {
  const w = words.lapping
  const names = [...folded, 'isNewRing', 'note'] as const
  const isUsed = names.some((name) => typed.values[name] !== '')
  const { error } = lapFieldProps(typed, 'isNewRing')
  return (
    <section class="question">
      <details class="fold" open={isUsed}>
        <summary>{w.moreTitle}</summary>
        <div class="fold-body stack">
          <div class="field-pair">
            {folded.map((name) => (
              <LapFigureField typed={typed} name={name} />
            ))}
          </div>
          <CheckField
            name="isNewRing"
            value="yes"
            label={w.newRing}
            hint={w.newRingHint}
            isChecked={typed.values.isNewRing === 'yes'}
            error={error}
          />
          <TextAreaField {...lapFieldProps(typed, 'note')} label={w.note} rows={2} />
        </div>
      </details>
    </section>
  )
}
