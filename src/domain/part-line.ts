import type { StripPart } from './strip-part.ts'

/** What becomes of a part. */
export const partFates = ['re-used', 'relapped', 'replaced'] as const
export type PartFate = (typeof partFates)[number]

/** One part of the seal as it leaves; for a new one, what it is known by. */
export type NewPartLine = {
  readonly workOrderId: number
  readonly part: StripPart
  readonly description: string
  readonly fate: PartFate
  readonly quantityCount: number
  /** Of the new part: batch or heat, its paper, compound and cure date (secondary seals); '' or null. */
  readonly batch: string
  readonly certificate: string
  readonly compound: string
  readonly curedOn: string | null
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type PartLine = NewPartLine & {
  readonly id: number
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}
