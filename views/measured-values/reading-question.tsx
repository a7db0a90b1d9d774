import type { FC } from 'hono/jsx'
import type { MeasuredFamily } from '../../src/domain/measured-family.ts'
import { lengthUnits } from '../../src/domain/measured-value.ts'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { ownSentence } from '../own-error-of.ts'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { NumberField, type Typed, typedProps } from './fields.tsx'

/** What was read: one figure, the same again where it was read again, and what it is read in. */
export const ReadingQuestion: FC<{ number: number; family: MeasuredFamily; typed: Typed }> = ({
  number,
  family,
  typed,
}) => {
  const { measuredValues: w, trade } = words
  const [, ...again] = typed.values.readings
  const isReadAgain = again.some((one) => one !== '')
  return (
    <Question number={number} title={w.readTitle[family]}>
      <div class="field-pair">
        <ReadingField typed={typed} index={0} hint={w.readHint[family]} />
        <SelectField
          {...typedProps(typed, 'unit')}
          label={w.unit}
          hint={w.unitHint}
          options={lengthUnits.map((value) => ({ value, label: trade.unit[value] }))}
        />
      </div>
      {family === 'dial' ? (
        <NumberField
          typed={typed}
          name="sizeMm"
          label={w.bore}
          hint={w.boreHint}
          unit={trade.unit.mm}
        />
      ) : null}
      <details class="fold" open={isReadAgain}>
        <summary>{family === 'roughness' ? w.traceAgainTitle : w.againTitle}</summary>
        <div class="fold-body">
          <p class="field-hint">{family === 'roughness' ? w.traceAgainHint : w.againHint}</p>
          <div class="field-pair">
            {again.map((_, index) => (
              <ReadingField typed={typed} index={index + 1} />
            ))}
          </div>
        </div>
      </details>
    </Question>
  )
}

const ReadingField: FC<{ typed: Typed; index: number; hint?: string }> = (props) => {
  const { typed, index, hint } = props
  const { measuredValues: w } = words
  const name = `readings[${index}].value`
  const own = [name, `readings[${index}]`, ...(index === 0 ? ['readings'] : [])]
  const fault = typed.faults.find((one) => own.includes(one.field))
  return (
    <Field
      id={`reading-${index}`}
      name={name}
      label={w.reading(index + 1)}
      value={typed.values.readings[index] ?? ''}
      hint={hint}
      inputMode="decimal"
      width="number"
      {...(fault === undefined ? {} : { error: ownSentence(fault, w.faults) })}
      {...(index === 0 ? { isRequired: true } : {})}
    />
  )
}
