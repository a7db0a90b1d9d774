import type { CombinationRefusal } from '../../domain/combination-refusal.ts'

/** Thrown out of the transaction, so that nothing is recorded: the page says why. */
export class CombinationRefused extends Error {
  readonly refusal: CombinationRefusal

  constructor(refusal: CombinationRefusal) {
    super(`combination refused: ${refusal}`)
    this.name = 'CombinationRefused'
    this.refusal = refusal
  }
}
