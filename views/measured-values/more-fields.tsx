import type { FC } from 'hono/jsx'
import { confirmField } from '../../src/domain/confirmed.ts'
import { faceStates } from '../../src/domain/face-state.ts'
import { fittingKinds, type MeasuredFamily } from '../../src/domain/measured-family.ts'
import { traceDirections } from '../../src/domain/measured-value.ts'
import { SelectField } from '../components/select-field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ConfirmBeyond } from '../confirm-beyond.tsx'
import { type InstrumentChoice, InstrumentField } from '../recording/instrument-field.tsx'
import { words } from '../words/en.ts'
import { NumberField, type Typed, typedProps } from './fields.tsx'

/** With what it was read, and what only the reader knows about it. */
export const MeasuredMoreFields: FC<{
  family: MeasuredFamily
  typed: Typed
  choice: InstrumentChoice
}> = ({ family, typed, choice }) => {
  const w = words.measuredValues
  return (
    <section class="question">
      <h2 class="section-head">{w.moreTitle}</h2>
      <InstrumentField
        {...typedProps(typed, 'instrumentId')}
        label={w.instrument}
        choice={choice}
        kinds={fittingKinds[family]}
        isRequired
      />
      <div class="field-pair">
        {budgetNames[family].map((name) => (
          <NumberField
            typed={typed}
            name={name}
            label={w.budget[name].label}
            hint={w.budget[name].hint}
            unit={w.budget[name].unit}
          />
        ))}
      </div>
      {family === 'roughness' ? <FinishSelects typed={typed} /> : null}
      <ConfirmBeyond faults={typed.faults} typed={typed.values[confirmField]} />
      <TextAreaField {...typedProps(typed, 'note')} label={w.note} rows={2} />
    </section>
  )
}

/** Ra depends on both. */
const FinishSelects: FC<{ typed: Typed }> = ({ typed }) => {
  const { measuredValues: w, finish } = words
  return (
    <div class="field-pair">
      <SelectField
        {...typedProps(typed, 'traceDirection')}
        label={w.trace}
        hint={w.traceHint}
        emptyLabel={w.traceNotSaid}
        options={traceDirections.map((value) => ({ value, label: w.traces[value] }))}
      />
      <SelectField
        {...typedProps(typed, 'faceState')}
        label={finish.state}
        hint={finish.stateHint}
        emptyLabel={finish.stateNotSaid}
        options={faceStates.map((value) => ({ value, label: finish.states[value] }))}
      />
    </div>
  )
}

const budgetNames = {
  roughness: ['cutOffMm', 'evaluationLengthMm', 'tipRadiusUm'],
  height: ['settingStandardUncertaintyUm', 'temperatureHalfWidthK', 'leverAngleDeg'],
  dial: ['leverAngleDeg'],
} as const satisfies Readonly<Record<MeasuredFamily, readonly string[]>>
