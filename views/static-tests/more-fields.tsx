import type { FC } from 'hono/jsx'
import { confirmField } from '../../src/domain/confirmed.ts'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ConfirmBeyond } from '../confirm-beyond.tsx'
import { type InstrumentChoice, InstrumentField } from '../recording/instrument-field.tsx'
import { words } from '../words/en.ts'
import { StaticTestBudgetFields } from './budget-fields.tsx'
import { NumberField, type Typed, typedProps } from './fields.tsx'

/** With what it was tested: the gauge of the last test, seldom touched. */
export const StaticTestMoreFields: FC<{
  typed: Typed
  choice: InstrumentChoice
}> = ({ typed, choice }) => {
  const { staticTests: w, trade } = words
  return (
    <section class="question">
      <h2 class="section-head">{w.moreTitle}</h2>
      <div class="field-pair">
        <InstrumentField
          {...typedProps(typed, 'gaugeInstrumentId')}
          label={w.gauge}
          choice={choice}
          kinds={['pressure-gauge', 'pressure-transducer']}
          isRequired
        />
        <InstrumentField
          {...typedProps(typed, 'thermometerInstrumentId')}
          label={w.thermometer}
          choice={choice}
          kinds={['thermometer']}
          emptyLabel={w.noThermometer}
        />
        <InstrumentField
          {...typedProps(typed, 'volumeInstrumentId')}
          label={w.calibratedVolume}
          choice={choice}
          kinds={['volume']}
          emptyLabel={w.noCalibratedVolume}
        />
      </div>
      <div class="field-pair">
        <NumberField
          typed={typed}
          name="barometerKPa"
          label={w.barometer}
          unit={trade.unit.kPa}
          hint={w.barometerHint}
          isOptional
        />
        <NumberField
          typed={typed}
          name="stabilisationS"
          label={w.stabilisation}
          unit={trade.unit.s}
          hint={w.stabilisationHint}
          isOptional
        />
      </div>
      <StaticTestBudgetFields typed={typed} />
      <ConfirmBeyond faults={typed.faults} typed={typed.values[confirmField]} />
      <TextAreaField {...typedProps(typed, 'note')} label={w.note} rows={2} />
    </section>
  )
}
