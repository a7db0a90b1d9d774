import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { words } from '../words/en.ts'
import type { FacePhotoValues } from './form-values.ts'
import { photoField, photoSentence } from './photo-fault.ts'

type Props = { values: FacePhotoValues; faults: readonly Fault[] }

function errorOf(faults: readonly Fault[], name: string): { error?: string } {
  const fault = faults.find((one) => photoField(one) === name)
  return fault === undefined ? {} : { error: photoSentence(fault) }
}

/** Taps along the bands: which order the next one has, and all of them in numbers. */
export const MarkFields: FC<Props> = ({ values, faults }) => {
  const w = words.facePhoto
  return (
    <div class="photo-kind photo-kind-marked stack">
      <h3>{w.marksTitle}</h3>
      <p class="field-hint">{w.marksHint}</p>
      <div class="photo-order" data-order-tools="" hidden>
        <button type="button" class="stepper-button" data-order-step="-0.5" aria-label={w.lessHalf}>
          −½
        </button>
        <label class="photo-order-now">
          <span>{w.order}</span>
          <input
            class="field-input"
            data-order=""
            value="1"
            inputmode="decimal"
            autocomplete="off"
          />
        </label>
        <button type="button" class="stepper-button" data-order-step="0.5" aria-label={w.moreHalf}>
          +½
        </button>
        <button type="button" class="button button-plain" data-order-step="1">
          {w.nextBand}
        </button>
        <button type="button" class="button button-plain" data-mark-add="">
          {w.addMark}
        </button>
        <button type="button" class="button button-plain" data-mark-undo="">
          {w.undo}
        </button>
        <button type="button" class="button button-plain" data-mark-clear="">
          {w.clear}
        </button>
        <p class="strong">
          {w.markCount}: <output data-mark-count="">0</output>
        </p>
      </div>
      <details class="fold" open={faults.some((one) => one.field.startsWith('points'))}>
        <summary>{w.marksFold}</summary>
        <div class="fold-body">
          <TextAreaField
            name="points"
            label={w.marksLines}
            value={values.points}
            rows={8}
            {...errorOf(faults, 'points')}
          />
        </div>
      </details>
      <ChoiceCards
        name="increasingTowards"
        legend={w.rising}
        value={values.increasingTowards}
        choices={(['gap-opens', 'gap-closes', ''] as const).map((value) => ({
          value,
          label: w.risings[value],
        }))}
        {...errorOf(faults, 'increasingTowards')}
      />
    </div>
  )
}

/** Straight lines over the photograph, and what a band leaves them by. */
export const GridFields: FC<Props> = ({ values, faults }) => {
  const w = words.facePhoto
  const number = (name: keyof FacePhotoValues & string, label: string, unit: string) => (
    <Field
      name={name}
      label={label}
      value={values[name] as string}
      unit={unit}
      inputMode="decimal"
      width="number"
      {...errorOf(faults, name)}
    />
  )
  return (
    <div class="photo-kind photo-kind-line-grid stack">
      <h3>{w.gridTitle}</h3>
      <p class="field-hint">{w.gridHint}</p>
      <div class="photo-numbers" data-grid-fields="">
        {number('gridDirectionDeg', w.gridDirection, words.trade.unit.deg)}
        {number('gridSpacingPx', w.gridSpacing, w.px)}
        {number('gridOffsetPx', w.gridOffset, w.px)}
      </div>
      <div class="photo-numbers">
        {number('oneWayBands', w.oneWay, w.bands)}
        {number('otherWayBands', w.otherWay, w.bands)}
      </div>
    </div>
  )
}

/** A second photograph decides the sign, where it was taken while the flat was pressed. */
export const ShowButton: FC<{ action: string }> = ({ action }) => (
  <ButtonRow>
    <Button
      label={words.facePhoto.show}
      attributes={{ formaction: `${action}/preview`, 'data-show': '' }}
    />
  </ButtonRow>
)
