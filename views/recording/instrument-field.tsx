import type { FC } from 'hono/jsx'
import { calibrationStatus } from '../../src/domain/calibration-status.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { instrumentUse } from '../../src/domain/instrument-use.ts'
import { SelectField } from '../components/select-field.tsx'
import { words } from '../words/en.ts'

/**
 * The choice of an instrument. What its label says about calibration stands beside each; a
 * withdrawn one can't be chosen and is named below.
 */
export const InstrumentField: FC<{
  name: string
  label: string
  instruments: readonly Instrument[]
  /** Day of use. */
  day: string
  value: string
  error?: string | undefined
  isRequired?: boolean
  emptyLabel?: string
}> = ({ name, label, instruments, day, value, error, isRequired, emptyLabel }) => {
  const w = words.recording
  const isOut = (one: Instrument) => calibrationStatus(one, day) === 'withdrawn'
  const usable = instruments.filter((one) => !isOut(one))
  const withdrawn = instruments.filter(isOut).map((one) => one.number)
  const hints = [
    usable.length === 0 ? w.noInstrument : '',
    withdrawn.length === 0 ? '' : w.withdrawn(withdrawn.join(', ')),
  ].filter((text) => text !== '')
  return (
    <SelectField
      name={name}
      label={label}
      value={value}
      emptyLabel={emptyLabel ?? w.choose}
      error={error}
      {...(hints.length === 0 ? {} : { hint: hints.join(' ') })}
      {...(isRequired ? { isRequired } : {})}
      options={usable.map((one) => ({ value: String(one.id), label: labelOf(one, day) }))}
    />
  )
}

/** Number, name, and how it stands: `L-02 Helium lamp · due 2027-01-10`. */
function labelOf(instrument: Instrument, day: string): string {
  const { status, dueOn } = instrumentUse(instrument, day)
  const { recording, trade } = words
  const standing =
    dueOn === null
      ? trade.calibrationStatus[status]
      : status === 'overdue'
        ? recording.overdueSince(dueOn)
        : recording.dueOn(dueOn)
  return `${instrument.number} ${instrument.name} · ${standing}`
}
