import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { words } from '../words/en.ts'
import type { FacePhotoValues } from './form-values.ts'
import { photoError } from './photo-error.ts'

const ways = ['gap-opens', 'gap-closes', ''] as const

/** The marks that were set: one by one for whoever has a script, in numbers for everybody. */
export const MarkFields: FC<{ values: FacePhotoValues; faults: readonly Fault[] }> = (props) => {
  const { values, faults } = props
  const w = words.facePhoto
  return (
    <div class="photo-kind photo-kind-marked stack">
      <h3>{w.marksTitle}</h3>
      <p class="field-hint">{w.marksHint}</p>
      <section data-mark-lists="" aria-label={w.markList} hidden>
        <p class="strong">{w.markList}</p>
        <p class="field-hint">{w.markListHint}</p>
        <div class="mark-list" data-mark-list="" data-order-label={w.orderOf('%')}></div>
      </section>
      <details class="fold" open={faults.some((one) => one.field.startsWith('points'))}>
        <summary>{w.marksFold}</summary>
        <div class="fold-body">
          <TextAreaField
            name="points"
            label={w.marksLines}
            value={values.points}
            rows={8}
            {...photoError(faults, 'points')}
          />
        </div>
      </details>
      <ChoiceCards
        name="increasingTowards"
        legend={w.rising}
        hint={w.risingHint}
        value={values.increasingTowards}
        choices={ways.map((value) => ({ value, label: w.risings[value] }))}
        {...photoError(faults, 'increasingTowards')}
      />
    </div>
  )
}
