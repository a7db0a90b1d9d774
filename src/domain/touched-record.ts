import type { Characteristic } from './characteristic.ts'
import type { Doubt } from './doubt.ts'
import type { UsedSubject } from './result-subject.ts'

/**
 * A figure of a record, in the stored unit of its characteristic (movement told by a track in µm,
 * load of springs in N); null where it has none.
 */
export type TouchedFigure = {
  readonly characteristic: Characteristic | 'track-movement' | 'spring-load'
  readonly value: number | null
}

/** A record that an instrument was used for. */
export type UsedRecord = UsedSubject & {
  readonly workOrderId: number
  /** When it was used: the start of a static test, else when it was recorded. */
  readonly usedAt: string
  readonly recordedById: number
  readonly figures: readonly TouchedFigure[]
}

/** The same with the doubt about it, and where it went from there. */
export type TouchedRecord = UsedRecord &
  Doubt & {
    readonly workOrderNumber: string
    readonly customerName: string
    /** It was measured again or corrected since. */
    readonly isReplaced: boolean
    /** Issued while it stood, oldest first. */
    readonly certificateNumbers: readonly string[]
  }
