import type { Limit } from '../../src/domain/limit-set.ts'
import type { FaceKind } from '../../src/domain/seal.ts'

/** A face that can be read, with what its flatness is held against. */
export type FaceChoice = {
  readonly id: number
  readonly kind: FaceKind
  readonly material: string
  readonly limit: Limit | null
}
