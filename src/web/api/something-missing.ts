import { AppError } from '../../domain/app-error.ts'
import type { Missing } from '../../domain/missing-for-hand-over.ts'

/** A conflict that carries what is missing. */
export class SomethingMissing extends AppError {
  readonly missing: readonly Missing[]

  constructor(missing: readonly Missing[]) {
    super('conflict', 'something-missing')
    this.missing = missing
  }
}
