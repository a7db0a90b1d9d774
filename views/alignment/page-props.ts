import type { Alignment } from '../../src/domain/alignment.ts'
import type { CertifiedSurvey } from '../../src/domain/certified-survey.ts'
import type { ComparedTrack } from '../../src/domain/compared-tracks.ts'
import type { Judged } from '../../src/domain/judged.ts'
import type { LimitConflict } from '../../src/domain/other-limits.ts'

/** A survey that stands, with what the order's set says of it. */
export type AlignedSurvey = {
  readonly measuredValueId: number
  readonly survey: CertifiedSurvey
  readonly judged: Judged
  /** What the other sets in force would say; null for who may not see them. */
  readonly conflict: LimitConflict | null
}

export type AlignmentForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly alignment: Alignment
  readonly surveys: readonly AlignedSurvey[]
  readonly tracks: readonly ComparedTrack[]
  readonly back: { readonly to: 'order' | 'seal'; readonly href: string }
}
