import type { CombinationRefusal } from '../../src/domain/combination-refusal.ts'
import type { CombinedWholeFace } from '../../src/domain/combine-whole-faces.ts'
import type { WholeFaceComparison } from '../../src/domain/compare-whole-faces.ts'
import type { LappedBetween } from '../../src/domain/lapped-between.ts'
import type { WholeReading } from '../../src/domain/pair-to-compare.ts'
import type { Component } from '../../src/domain/seal.ts'

/** A reading as it is chosen and headed; the number of its lap cycle, null where there is none. */
export type ListedReading = { readonly reading: WholeReading; readonly afterCycle: number | null }

/** How the later reading is laid on the earlier. */
export const faceLays = ['by-form', 'as-taken'] as const
export type FaceLay = (typeof faceLays)[number]

export type ComparedPair = {
  /** The earlier one. */
  readonly first: ListedReading
  readonly second: ListedReading
  readonly comparison: WholeFaceComparison
  readonly between: LappedBetween
  /** As found beside as left, or lapped in between. */
  readonly isBeforeAfter: boolean
  /** For whoever may record it; null for others. */
  readonly combination:
    | { readonly kind: 'refused'; readonly refusal: CombinationRefusal }
    | { readonly kind: 'offered'; readonly combined: CombinedWholeFace }
    | null
}

export type WholeFacesForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  /** Faces that were read whole, with which of them is looked at; null where none was. */
  readonly faces: readonly Component[]
  readonly face: Component | null
  /** Of that face, oldest first. */
  readonly readings: readonly ListedReading[]
  /** Null with fewer than two, or where one was chosen twice. */
  readonly pair: ComparedPair | null
  /** As asked; undefined: turned, but not across a lap. */
  readonly lay: FaceLay | undefined
  readonly formKey: string
  /** Asked to be recorded and refused. */
  readonly refused: CombinationRefusal | null
  readonly back: { readonly to: 'order' | 'seal'; readonly href: string }
}
