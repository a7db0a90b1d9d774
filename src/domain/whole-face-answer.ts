import type { PhotoRefusalReason } from '../science/photo/photo-refusal.ts'
import type { ComputedFlatness } from './compute-flatness.ts'
import type { Fault } from './fault.ts'
import type { InstrumentUse } from './instrument.ts'
import type { Judged } from './judged.ts'
import type { WholeFace } from './whole-face.ts'

/** What can be said of a photograph of which perhaps not all is set yet. */
export type WholeFaceAnswer = {
  /** Lamp and flat as far as they are chosen. */
  readonly uses: readonly InstrumentUse[]
  readonly outcome:
    | { readonly kind: 'ask'; readonly ask: 'edges' | 'lamp' | 'marks' | 'departures' }
    | { readonly kind: 'faulty'; readonly faults: readonly Fault[] }
    | {
        readonly kind: 'refused'
        readonly reason: PhotoRefusalReason
        /** Of the photograph or, of a press test, of the second one. */
        readonly isSecond: boolean
        readonly measured: number | null
        readonly limit: number | null
      }
    /** The program had no time for it. */
    | { readonly kind: 'stopped'; readonly reason: 'photo-busy' | 'photo-too-long' }
    | {
        readonly kind: 'figures'
        readonly computed: ComputedFlatness
        readonly wholeFace: WholeFace
        readonly judged: Judged
        /** Of a press test with two photographs; null where there was none. */
        readonly press: { readonly isDecided: boolean; readonly movedBands: number } | null
      }
}
