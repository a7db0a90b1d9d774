import type { Fault } from '../../domain/fault.ts'

/** Input that was refused: answered 422, one sentence a field. */
export class InputRefused extends Error {
  readonly faults: readonly Fault[]

  constructor(faults: readonly Fault[]) {
    super(`input refused: ${faults.map((one) => `${one.field} ${one.kind}`).join(', ')}`)
    this.faults = faults
  }
}
