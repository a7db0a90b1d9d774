import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { BandStepper } from '../components/band-stepper.tsx'
import { Field } from '../components/field.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { flatnessSentence } from './fault-sentence.ts'
import type { DirectionValues } from './form-values.ts'

/** The count along one direction: by touch, by arrow keys, typed, or as bow over spacing. */
export const CountQuestion: FC<{
  number: number
  index: number
  values: DirectionValues
  pattern: string
  faults: readonly Fault[]
}> = ({ number, index, values, pattern, faults }) => {
  const w = words.flatness
  const { directionDeg, bowMm, spacingMm } = values
  const error = (name: string) => {
    const isWhole = (field: string) =>
      name === 'bands' && (field === `readings[${index}]` || (field === 'readings' && index === 1))
    const fault = faults.find(
      (one) => one.field === `readings[${index}].${name}` || isWhole(one.field),
    )
    return fault === undefined ? undefined : flatnessSentence(fault, pattern)
  }
  const isBowOpen = [bowMm, spacingMm].some((text) => text !== '')
  return (
    <Question number={number} title={w.countAlong(directionDeg)}>
      <input type="hidden" name={`readings[${index}].directionDeg`} value={directionDeg} />
      <BandStepper
        id={`bands-${index}`}
        name={`readings[${index}].bands`}
        label={w.countLabel(directionDeg)}
        hint={index === 0 ? w.countHint : w.secondHint}
        unit={words.trade.unit.bands}
        value={values.bands}
        labels={w.steps}
        error={error('bands') ?? error('directionDeg')}
      />
      <details class="fold" open={isBowOpen}>
        <summary>{w.bowTitle}</summary>
        <div class="fold-body">
          <p class="field-hint">{w.bowHint}</p>
          <div class="field-pair">
            {(['bowMm', 'spacingMm'] as const).map((name) => (
              <Field
                id={`${name}-${index}`}
                name={`readings[${index}].${name}`}
                label={name === 'bowMm' ? w.bow : w.spacing}
                unit={words.trade.unit.mm}
                value={values[name]}
                inputMode="decimal"
                width="number"
                error={error(name)}
              />
            ))}
          </div>
        </div>
      </details>
    </Question>
  )
}
