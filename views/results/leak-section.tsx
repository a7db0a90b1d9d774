import type { FC } from 'hono/jsx'
import type { EstimatedLeak } from '../../src/domain/estimate-leak.ts'
import type { Fault } from '../../src/domain/fault.ts'
import { figure } from '../../src/domain/figure.ts'
import { leakGases } from '../../src/domain/leak-gas.ts'
import { leakInUnits } from '../../src/domain/leak-in-units.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { DataTable } from '../components/data-table.tsx'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { resultText } from '../figures/result-text.ts'
import { faultSentence } from '../words/en/faults.ts'
import { words } from '../words/en.ts'

export type LeakShown = {
  readonly leakPaM3PerS: number
  readonly referenceTemperatureC: number
  readonly typed: Readonly<Record<string, string>>
  readonly faults: readonly Fault[]
  /** Null: not asked for. */
  readonly estimate: EstimatedLeak | 'not-driven' | null
}

/** A leak in every unit of the trade with its state, and as an estimate for another gas. */
export const LeakSection: FC<{ shown: LeakShown }> = ({ shown }) => {
  const w = words.leak
  const celsius = figure(shown.referenceTemperatureC, 'as-entered').text
  return (
    <>
      <details class="fold">
        <summary>{w.unitsTitle}</summary>
        <div class="fold-body">
          <DataTable
            caption={w.unitsTitle}
            isCaptionHidden
            keepsColumns
            columns={[{ label: w.leak, kind: 'number' }, { label: w.unit }, { label: w.state }]}
            rows={leakInUnits(shown).map(({ unit, value }) => ({
              cells: [
                figure(value, { digits: 3 }).text,
                w.units[unit],
                w.states[w.stateOf[unit]](celsius),
              ],
            }))}
          />
        </div>
      </details>
      <section class="stack" id="estimate" aria-labelledby="estimate-title">
        <div class="section-head">
          <h2 id="estimate-title">{w.estimateTitle}</h2>
        </div>
        <Answer estimate={shown.estimate} />
        <EstimateForm shown={shown} />
      </section>
    </>
  )
}

const Answer: FC<{ estimate: LeakShown['estimate'] }> = ({ estimate }) => {
  const w = words.leak
  if (estimate === null) return <p>{w.estimateLead}</p>
  if (estimate === 'not-driven') return <p class="strong">{w.notDriven}</p>
  const { value, unit } = resultText('static-leak-rate', estimate.leakPaM3PerS)
  const entered = (number: number) => figure(number, 'as-entered').text
  return (
    <>
      <p class="lead strong">{w.estimated(`${value} ${unit}`, w.gases[estimate.gas])}</p>
      <p class="small">
        {w.assumption({
          testGas: w.gases[estimate.testGas],
          testViscosity: entered(estimate.testViscosityUPaS),
          gas: w.gases[estimate.gas],
          viscosity: entered(estimate.viscosityUPaS),
          upstream: figure(estimate.upstreamKPaAbs, { decimals: 1 }).text,
          downstream: figure(estimate.downstreamKPaAbs, { decimals: 1 }).text,
        })}
      </p>
    </>
  )
}

/** Asked by address, so that an answer can be sent to somebody. */
const EstimateForm: FC<{ shown: LeakShown }> = ({ shown: { typed, faults } }) => {
  const w = words.leak
  const props = (name: string) => {
    const fault = faults.find((one) => one.field === name)
    const error = fault === undefined ? {} : { error: faultSentence(fault) }
    return { name, value: typed[name] ?? '', ...error }
  }
  const gases = leakGases.map((value) => ({ value, label: w.gases[value] }))
  return (
    <form method="get" action="#estimate" class="stack">
      <div class="field-pair">
        <SelectField {...props('testGas')} label={w.testGas} options={gases} />
        <SelectField {...props('gas')} label={w.gas} options={gases} />
        <Field
          {...props('pressureKPaGauge')}
          label={w.pressure}
          unit={w.pressureUnit}
          inputMode="decimal"
          width="number"
          isRequired
        />
      </div>
      <details class="fold">
        <summary>{w.viscosities}</summary>
        <div class="fold-body field-pair">
          {(['testViscosityUPaS', 'viscosityUPaS'] as const).map((name) => (
            <Field
              {...props(name)}
              label={w.viscosity[name]}
              hint={w.viscosityHint}
              unit={w.viscosityUnit}
              inputMode="decimal"
              width="number"
            />
          ))}
        </div>
      </details>
      <ButtonRow>
        <Button label={w.estimate} />
      </ButtonRow>
    </form>
  )
}
