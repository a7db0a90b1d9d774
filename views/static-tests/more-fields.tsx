import type { FC } from 'hono/jsx'
import { confirmField } from '../../src/domain/confirmed.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ConfirmBeyond } from '../confirm-beyond.tsx'
import { InstrumentField } from '../recording/instrument-field.tsx'
import { words } from '../words/en.ts'
import { StaticTestBudgetFields } from './budget-fields.tsx'
import { NumberField, type Typed, typedProps } from './fields.tsx'

/** With what it was tested: the gauge of the last test, seldom touched. */
export const StaticTestMoreFields: FC<{
  typed: Typed
  instruments: readonly Instrument[]
  day: string
}> = ({ typed, instruments, day }) => {
  const { staticTests: w, trade } = words
  const of = (kind: Instrument['kind']) => instruments.filter((one) => one.kind === kind)
  return (
    <section class="question">
      <h2 class="section-head">{w.moreTitle}</h2>
      <div class="field-pair">
        <InstrumentField
          {...typedProps(typed, 'gaugeInstrumentId')}
          label={w.gauge}
          instruments={[...of('pressure-gauge'), ...of('pressure-transducer')]}
          day={day}
          isRequired
        />
        <InstrumentField
          {...typedProps(typed, 'thermometerInstrumentId')}
          label={w.thermometer}
          instruments={of('thermometer')}
          day={day}
          emptyLabel={w.noThermometer}
        />
        <InstrumentField
          {...typedProps(typed, 'volumeInstrumentId')}
          label={w.calibratedVolume}
          instruments={of('volume')}
          day={day}
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
