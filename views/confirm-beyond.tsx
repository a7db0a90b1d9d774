import type { FC } from 'hono/jsx'
import { confirmField } from '../src/domain/confirmed.ts'
import type { Fault } from '../src/domain/fault.ts'
import { CheckField } from './components/check-field.tsx'
import { words } from './words/en.ts'

/** Asked only where a value lies beyond the trade's window, or was confirmed already. */
export const ConfirmBeyond: FC<{
  faults: readonly Fault[]
  typed: string | undefined
}> = ({ faults, typed }) => {
  const isConfirmed = typed === 'yes'
  if (!isConfirmed && !faults.some((one) => one.kind === 'beyond-window')) return null
  return (
    <CheckField
      name={confirmField}
      value="yes"
      label={words.chrome.confirmBeyond}
      isChecked={isConfirmed}
    />
  )
}
