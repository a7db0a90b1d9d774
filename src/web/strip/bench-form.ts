import type { OwnSentences } from '../../../views/own-error-of.ts'
import type { BenchForm } from '../../../views/strip/bench-form-page.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { StripDesk } from './desk.ts'

/** A form of the strip bench as it is to be drawn. */
export type BenchDrawn<T> = {
  readonly values: Readonly<Record<string, string>>
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly replaced: T | undefined
}

type Replaceable = BenchForm['replaced']

/** What every form of the strip bench shows of its order. */
export function benchForm<T extends NonNullable<Replaceable>>(
  { evidence }: StripDesk,
  drawn: BenchDrawn<T>,
  of: { readonly place: string; readonly own: OwnSentences },
): BenchForm {
  const { values, faults, formKey, replaced } = drawn
  return {
    orderNumber: evidence.workOrder.number,
    sealSerial: evidence.seal.serial,
    place: of.place,
    typed: { values, faults, own: of.own },
    formKey,
    replaced: replaced ?? null,
  }
}

/** The instruments that a form may name, and what stands in their way. */
export function choiceOf({ evidence, instruments, exceptions, today }: StripDesk) {
  return { orderNumber: evidence.workOrder.number, instruments, exceptions, day: today }
}
