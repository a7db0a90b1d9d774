import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { words } from '../words/en.ts'
import { SwappedField } from './swapped-field.tsx'

export type CalculatorValues = {
  readonly lamp: string
  readonly quantity: string
  readonly value: string
  readonly viewingAngleDeg: string
}

/** The two numbers of the calculator. */
export const NumberFields: FC<{
  values: CalculatorValues
  faults: readonly Fault[]
  isSwap?: boolean
}> = ({ values, faults, isSwap }) => {
  const w = words.calculator
  return (
    <>
      <SwappedField
        name="value"
        label={w.value}
        value={values.value}
        faults={faults}
        isSwap={isSwap}
      />
      <SwappedField
        name="viewingAngleDeg"
        label={w.angle}
        hint={w.angleHint}
        unit={words.trade.unit.deg}
        value={values.viewingAngleDeg}
        faults={faults}
        isSwap={isSwap}
      />
    </>
  )
}
