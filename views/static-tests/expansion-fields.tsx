import type { FC } from 'hono/jsx'
import { words } from '../words/en.ts'
import { NumberField, type Typed } from './fields.tsx'

const names = ['knownVolumeL', 'filledPressure', 'beforePressure', 'joinedPressure'] as const

/** A volume found by expansion from a known one: four figures instead of one. */
export const ExpansionFields: FC<{ typed: Typed }> = ({ typed }) => {
  const { staticTests: w, trade } = words
  const isOpen = names.some((name) => typed.values[name] !== '')
  return (
    <details class="fold" open={isOpen}>
      <summary>{w.expansion.title}</summary>
      <div class="fold-body">
        <p class="field-hint">{w.expansion.hint}</p>
        <div class="field-pair">
          {names.map((name) => (
            <NumberField
              typed={typed}
              name={name}
              label={w.expansion.label[name]}
              isOptional
              {...(name === 'knownVolumeL' ? { unit: trade.unit.l } : {})}
            />
          ))}
        </div>
      </div>
    </details>
  )
}
