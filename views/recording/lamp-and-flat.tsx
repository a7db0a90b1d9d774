import type { FC } from 'hono/jsx'
import { words } from '../words/en.ts'
import { type InstrumentChoice, InstrumentField } from './instrument-field.tsx'

type Chosen = { readonly name: string; readonly value: string; readonly error?: string }

/** The two instruments without which a band has no size. */
export const LampAndFlat: FC<{ lamp: Chosen; flat: Chosen; choice: InstrumentChoice }> = ({
  lamp,
  flat,
  choice,
}) => {
  const w = words.flatness
  return (
    <div class="field-pair">
      <InstrumentField {...lamp} label={w.lamp} choice={choice} kinds={['lamp']} isRequired />
      <InstrumentField
        {...flat}
        label={w.flat}
        choice={choice}
        kinds={['optical-flat']}
        isRequired
      />
    </div>
  )
}
