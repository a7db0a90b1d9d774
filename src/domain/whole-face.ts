import type { Ellipse } from '../science/photo/ellipse.ts'
import type { WedgeSeen } from '../science/photo/gap-sign.ts'
import type { PhotoCaution, ResidualMap } from '../science/photo/photo-reading.ts'
import type { AnnularSurface } from '../science/surface/annular-surface.ts'

/** How a figure of the whole face was read; each is a method with a version of its own. */
export const wholeFaceKinds = ['photo', 'marked', 'line-grid', 'combined'] as const
export type WholeFaceKind = (typeof wholeFaceKinds)[number]

/** What stands in the pattern column of such a reading: nobody picked a pattern of bands. */
export const wholeFacePattern = 'whole-face'

/** Both edges as the technician left them, in pixels of the upright photograph. */
export type SetEdges = { readonly outer: Ellipse; readonly inner: Ellipse }

/** A tap on a band: pixels of the upright photograph, and its order (halves are bright middles). */
export type BandMark = { readonly x: number; readonly y: number; readonly order: number }

export type OrderDirection = 'gap-opens' | 'gap-closes'

/** The program found the bands. */
export type PhotoSource = SetEdges & {
  readonly kind: 'photo'
  readonly photoId: number
  /** What the technician saw of the gap; null where nobody could tell, or two photos told. */
  readonly wedge: WedgeSeen | null
  /** As stated; null: taken from the shape of the outer edge. */
  readonly viewingAngleDeg: number | null
  /** The second photograph of a press test with its edges; null where there is none. */
  readonly pressed: (SetEdges & { readonly photoId: number }) | null
}

/** The technician tapped along the bands. */
export type MarkedSource = SetEdges & {
  readonly kind: 'marked'
  /** Null where a program sent marks without their photograph. */
  readonly photoId: number | null
  readonly points: readonly BandMark[]
  /** Null where nobody could tell which way the gap grows. */
  readonly increasingTowards: OrderDirection | null
  /** As stated; null: taken from the shape of the outer edge. */
  readonly viewingAngleDeg: number | null
}

/** Straight lines were laid over the photograph, and the largest departure each way read. */
export type LineGridSource = {
  readonly kind: 'line-grid'
  readonly photoId: number
  /** Of the lines, degrees counter-clockwise from the right of the photograph. */
  readonly directionDeg: number
  /** Between two lines, and of the first one from the middle of the photograph, in pixels. */
  readonly spacingPx: number
  readonly offsetPx: number
  /** As stated, else from the shape of the edge that was found; null: not known. */
  readonly viewingAngleDeg: number | null
  /** Largest departures of a band from its line, in bands, both 0 or more. */
  readonly oneWayBands: number
  readonly otherWayBands: number
}

/** Several readings of one face, turned onto each other. */
export type CombinedSource = {
  readonly kind: 'combined'
  readonly parts: readonly {
    readonly readingId: number
    /** Counter-clockwise, to lie on the first part. */
    readonly turnDeg: number
    readonly isUpsideDown: boolean
    /** Share of the mean, from 0 to 1. */
    readonly weight: number
  }[]
}

export type WholeFaceSource = PhotoSource | MarkedSource | LineGridSource | CombinedSource

/** What the program saw in a photograph, to be drawn over it. Null: no picture was read. */
export type SeenInPhoto = SetEdges & {
  readonly bandLines: readonly {
    readonly order: number
    readonly points: readonly (readonly [number, number])[]
  }[]
  /** Of the light, over the swing of the bands; null for marks. */
  readonly residuals: ResidualMap | null
  /** Of each mark, in bands, + where the gap is larger than fitted; empty for a photo reading. */
  readonly markResidualsBands: readonly number[]
  /** Middles of sectors that are not explained, degrees counter-clockwise from the right. */
  readonly doubtfulDeg: readonly number[]
  /** Direction in which the gap grows, by the sign of the surface. */
  readonly tiltDirectionDeg: number
  readonly tiltBands: number
}

export type WholeFaceLobe = {
  readonly order: number
  readonly amplitudeUm: number
  readonly phaseDeg: number
}

/**
 * What a reading of a whole face keeps beside its flatness: where it comes from, the surface, and
 * what else is said of it. Its method with version stands in the reading; the photograph in
 * `face_photo`: with both the figures can be computed again, bit for bit.
 */
export type WholeFace = {
  readonly source: WholeFaceSource
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
  /** Heights in um, + is material high, upside down perhaps where the sign is not known; null for a
   * line grid, which fits none. */
  readonly surface: AnnularSurface | null
  readonly isSignKnown: boolean
  readonly minimumZoneUm: number | null
  readonly rmsUm: number | null
  /** Outer edge less inner edge; null where the sign is not known. */
  readonly taperUm: number | null
  readonly lobes: readonly WholeFaceLobe[]
  /** From 0 to 1: how much of the land was seen and explained. */
  readonly quality: number | null
  readonly cautions: readonly PhotoCaution[]
  readonly seen: SeenInPhoto | null
}
