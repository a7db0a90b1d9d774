import type { FC } from 'hono/jsx'
import { words } from '../words/en.ts'
import { NumberField, type Typed } from './fields.tsx'

const names = [
  'volumeUncertaintyPercent',
  'timeUncertaintyS',
  'pressureUncertaintyPa',
  'temperatureUncertaintyK',
] as const

/** Standard uncertainties that the instruments don't tell, or that are better known. */
export const StaticTestBudgetFields: FC<{ typed: Typed }> = ({ typed }) => {
  const { budget: w } = words.staticTests
  const isFaulty = typed.faults.some((one) => names.some((name) => name === one.field))
  return (
    <details class="fold" open={isFaulty} id="uncertainty">
      <summary>{w.title}</summary>
      <div class="fold-body stack">
        <p class="field-hint">{w.hint}</p>
        <div class="field-pair">
          {names.map((name) => (
            <NumberField
              typed={typed}
              name={name}
              label={w.label[name]}
              hint={w.fieldHint[name]}
              unit={w.unit[name]}
              isOptional
            />
          ))}
        </div>
      </div>
    </details>
  )
}
