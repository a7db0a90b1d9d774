import type { FC } from 'hono/jsx'
import type { Instrument } from '../../src/domain/instrument.ts'
import { words } from '../words/en.ts'
import type { FlatnessFormValues } from './form-values.ts'

/** Lamp and optical flat of the last reading, the way to change them, and what to mind. */
export const Remembered: FC<{
  values: Pick<FlatnessFormValues, 'lampInstrumentId' | 'opticalFlatInstrumentId'>
  instruments: readonly Instrument[]
  /** Sent along with an answer: takes the place of the line that stands there. */
  isSwap?: boolean
}> = ({ values, instruments, isSwap }) => {
  const w = words.flatness
  const nameOf = (id: string) => {
    const found = instruments.find((one) => String(one.id) === id)
    return found === undefined ? w.notChosen : `${found.number} ${found.name}`
  }
  return (
    <div class="remembered" id="remembered" {...(isSwap ? { 'hx-swap-oob': 'true' } : {})}>
      <p>
        {w.lamp}: <span class="strong">{nameOf(values.lampInstrumentId)}</span>
      </p>
      <p>
        {w.flat}: <span class="strong">{nameOf(values.opticalFlatInstrumentId)}</span>
      </p>
      <a class="button button-quiet" href="#lampInstrumentId">
        {w.change}
      </a>
      <a class="caution-line" href="#cautions">
        {w.cautionLine}
      </a>
    </div>
  )
}
