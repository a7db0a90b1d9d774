import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Field } from '../components/field.tsx'
import { words } from '../words/en.ts'
import type { FacePhotoValues } from './form-values.ts'
import { photoError } from './photo-error.ts'

/** Straight lines over the photograph, and what a band leaves them by. */
export const GridFields: FC<{ values: FacePhotoValues; faults: readonly Fault[] }> = (props) => {
  const { values, faults } = props
  const w = words.facePhoto
  const number = (name: keyof FacePhotoValues & string, label: string, unit: string) => (
    <Field
      name={name}
      label={label}
      value={values[name] as string}
      unit={unit}
      inputMode="decimal"
      width="number"
      {...photoError(faults, name)}
    />
  )
  return (
    <div class="photo-kind photo-kind-line-grid stack">
      <h3>{w.gridTitle}</h3>
      <p class="field-hint">{w.gridHint}</p>
      <div class="photo-numbers">
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
