import type { AnnularSurface } from '../surface/annular-surface.ts'
import type { FittedGap } from '../surface/press-test.ts'
import type { BandLine } from './band-lines.ts'
import type { Ellipse } from './ellipse.ts'
import type { PhotoUncertainty } from './photo-uncertainty.ts'

/** Something to confirm before the figure is used. */
export type PhotoCaution = 'local-defect-or-step' | 'outer-edge-as-set' | 'inner-edge-as-set'

/** What was read from a picture; heights in bands of normal view, + is material high. */
export interface PhotoReading {
  readonly kind: 'read'
  readonly surface: AnnularSurface
  /** The whole gap by the same sign, with its plane and its constant, for a press test. */
  readonly gap: FittedGap
  /** Whether the picture's one sign is known; if not, the map may be upside down. */
  readonly isSignKnown: boolean
  readonly peakToValleyBands: number
  /** Standard uncertainty from the picture alone, and its parts. */
  readonly standardUncertaintyBands: number
  readonly uncertainty: PhotoUncertainty
  /** Tilt of the flat that was taken away, bands over the outer diameter, as it was seen. */
  readonly tiltBands: number
  /** Direction in which the gap grows, degrees counter-clockwise from the right, by that sign. */
  readonly tiltDirectionDeg: number
  /** From 0 to 1: how much of the land is seen and explained. */
  readonly quality: number
  readonly explained: number
  readonly noiseOverSwing: number
  readonly outer: Ellipse
  readonly inner: Ellipse
  readonly isOuterFollowed: boolean
  readonly isInnerFollowed: boolean
  readonly cautions: readonly PhotoCaution[]
  /** Middles of sectors that are not explained, degrees counter-clockwise from the right. */
  readonly doubtfulDeg: readonly number[]
  readonly bandLines: readonly BandLine[]
  readonly residuals: ResidualMap
}

/** Mean residual by rings and sectors, over the swing of the bands; null where nothing was seen. */
export interface ResidualMap {
  readonly ringCount: number
  readonly sectorCount: number
  /** Radii of the first ring's inner and the last ring's outer border, outer radius 1. */
  readonly from: number
  readonly to: number
  /** Ring by ring from the inside, sectors counter-clockwise from the right. */
  readonly shares: readonly (number | null)[]
}
