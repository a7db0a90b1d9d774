import type { FC } from 'hono/jsx'
import { canBeChosen } from '../../src/domain/can-be-chosen.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { instrumentUse } from '../../src/domain/instrument-use.ts'
import type { UseException } from '../../src/domain/use-exception.ts'
import { SelectField } from '../components/select-field.tsx'
import { words } from '../words/en.ts'

/** What stands in an order's way to an instrument, and what an inspector allowed. */
export type InstrumentChoice = {
  readonly orderNumber: string
  readonly instruments: readonly Instrument[]
  readonly exceptions: readonly UseException[]
  /** On which the form is shown: of use and of recording. */
  readonly day: string
}

/**
 * The choice of an instrument. What its label says about calibration stands beside each; a
 * withdrawn one can't be chosen and is named below. Where one was refused, an inspector can be
 * asked for an exception.
 */
export const InstrumentField: FC<{
  name: string
  label: string
  choice: InstrumentChoice
  kinds: readonly Instrument['kind'][]
  value: string
  error?: string | undefined
  isRequired?: boolean
  emptyLabel?: string
}> = ({ name, label, choice, kinds, value, error, isRequired, emptyLabel }) => {
  const w = words.recording
  const { day } = choice
  const fitting = kinds.flatMap((kind) => choice.instruments.filter((one) => one.kind === kind))
  const usable = fitting.filter((one) => canBeChosen(one, { ...choice, recordedOn: day }))
  const withdrawn = fitting.filter((one) => !usable.includes(one)).map((one) => one.number)
  const refused = error === undefined ? undefined : fitting.find((one) => String(one.id) === value)
  const hints = [
    usable.length === 0 ? w.noInstrument : '',
    withdrawn.length === 0 ? '' : w.withdrawn(withdrawn.join(', ')),
  ].filter((text) => text !== '')
  return (
    <div class="stack">
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
      {refused === undefined ? null : (
        <a href={`/work-orders/${choice.orderNumber}/exceptions/new?instrument=${refused.id}`}>
          {words.exceptions.askFor(refused.number)}
        </a>
      )}
    </div>
  )
}

/** Number, name, and how it stands: `L-02 Helium lamp · due 2027-01-10`. */
function labelOf(instrument: Instrument, day: string): string {
  const { status, dueOn } = instrumentUse(instrument, day)
  const { recording, trade } = words
  const standing =
    dueOn === null || status === 'left-beyond'
      ? trade.calibrationStatus[status]
      : status === 'overdue'
        ? recording.overdueSince(dueOn)
        : recording.dueOn(dueOn)
  return `${instrument.number} ${instrument.name} · ${standing}`
}
