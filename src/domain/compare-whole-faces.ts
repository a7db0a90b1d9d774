import { atMost } from '../science/acceptance/at-most.ts'
import { differenceMap } from '../science/surface/difference-map.ts'
import { mapRms } from '../science/surface/map-rms.ts'
import { peakAndValley } from '../science/surface/peak-and-valley.ts'
import type { PolarMap } from '../science/surface/polar-map.ts'
import { usualCoverageFactor } from '../science/uncertainty/coverage-factor.ts'
import { type FaceAgreement, faceAgreement } from './face-agreement.ts'
import { type FaceFigureChange, faceFigureChanges } from './face-figure-changes.ts'
import { type FaceTurn, faceTurn } from './face-turn.ts'
import type { FlatnessReading } from './flatness.ts'
import { laySurface } from './lay-surface.ts'
import { mapOfWholeFace } from './map-of-whole-face.ts'
import { pictureUncertaintyUm } from './picture-uncertainty-um.ts'
import type { WholeFace } from './whole-face.ts'

/** A reading of a whole face, as far as another one is held against it. */
export type ComparedReading = Pick<FlatnessReading, 'flatnessUm' | 'uncertainty'> & {
  readonly wholeFace: WholeFace
}

/** A face as it is drawn beside the other one. */
export type LaidFace = Pick<WholeFace, 'surface' | 'outerDiameterMm' | 'isSignKnown'> & {
  readonly isUpsideDown: boolean
}

export type FaceDifference = {
  /** First less second, without plane; radii in mm, heights in um. */
  readonly map: PolarMap
  readonly peakToValleyUm: number
  readonly rmsUm: number
  /** Root of the sum of squares of what both pictures leave open, expanded. */
  readonly expandedPictureUm: number
  readonly isWithin: boolean
}

/**
 * - no-surface: a grid of lines fits none
 * - other-land: their diameters are of different rings
 * - sign-open: as taken, one of them may be upside down
 */
export type NoDifference = 'no-surface' | 'other-land' | 'sign-open'

export type WholeFaceComparison = {
  /** Null without two surfaces of one land. */
  readonly turn: FaceTurn | null
  /** Whether the second was laid on the first by it. */
  readonly isTurned: boolean
  readonly first: LaidFace
  readonly second: LaidFace
  readonly difference: FaceDifference | NoDifference
  /** Of their flatness; null where one has no uncertainty. */
  readonly agreement: FaceAgreement | null
  /** For both drawings; null without a surface. */
  readonly range: { readonly lowUm: number; readonly highUm: number } | null
  readonly changes: readonly FaceFigureChange[]
}

const mapSize = { ringCount: 17, angleCount: 180 } as const
/** As differenceMap takes them. */
const mostRatioApart = 0.02

/**
 * Holds two readings of one face against each other: turned onto each other, or as they were
 * taken, which tells nothing true unless the ring lay the same way both times.
 *
 * Figures agree within the root of the sum of squares of their expanded uncertainties (En number,
 * ISO 13528 and ISO/IEC 17043, from memory); maps where the peak to valley of their difference is
 * within that of the two pictures alone (own rule, no source).
 * @param first, second of one face; heights in um
 * @param asked isTurned: whether the second is laid on the first, turned and, where its sign is
 *   open, upside down
 */
export function compareWholeFaces(
  first: ComparedReading,
  second: ComparedReading,
  asked: { readonly isTurned: boolean },
): WholeFaceComparison {
  const turn = turnOf(first, second)
  const isTurned = asked.isTurned && turn !== null
  const [laidFirst, laidSecond] = laid(first.wholeFace, second.wholeFace, isTurned ? turn : null)
  return {
    turn,
    isTurned,
    first: laidFirst,
    second: laidSecond,
    difference: differenceOf(first, second, { laidFirst, laidSecond, isTurned }),
    agreement: agreementOf(first, second),
    range: rangeOf([laidFirst, laidSecond]),
    changes: faceFigureChanges(first, second),
  }
}

function turnOf(first: ComparedReading, second: ComparedReading): FaceTurn | null {
  const [one, other] = [turnable(first), turnable(second)]
  if (one === null || other === null || !areOfOneLand(first, second)) return null
  return faceTurn(one, other)
}

function turnable({ wholeFace, uncertainty }: ComparedReading) {
  const { surface, isSignKnown } = wholeFace
  if (surface === null) return null
  return { surface, isSignKnown, expandedPictureUm: pictureUm(uncertainty) }
}

/** Expanded, of the picture alone. */
function pictureUm(uncertainty: ComparedReading['uncertainty']): number {
  return usualCoverageFactor * pictureUncertaintyUm(uncertainty?.budget ?? [])
}

/** Both with a surface, and their rings alike. */
function areOfOneLand(first: ComparedReading, second: ComparedReading): boolean {
  const [one, other] = [first.wholeFace.surface, second.wholeFace.surface]
  if (one === null || other === null) return false
  return Math.abs(one.radiusRatio - other.radiusRatio) <= mostRatioApart
}

/** Whichever has its sign open gives way to the other. */
function laid(first: WholeFace, second: WholeFace, turn: FaceTurn | null): [LaidFace, LaidFace] {
  const isOpposite = turn?.isOpposite ?? false
  const isFirstDown = isOpposite && second.isSignKnown
  const isSecondDown = isOpposite && !second.isSignKnown
  const isSignKnown = turn?.standing === 'found' && (first.isSignKnown || second.isSignKnown)
  const lay = (face: WholeFace, turnDeg: number, isUpsideDown: boolean): LaidFace => ({
    surface: face.surface && laySurface(face.surface, { turnDeg, isUpsideDown }),
    outerDiameterMm: face.outerDiameterMm,
    isSignKnown: isSignKnown || face.isSignKnown,
    isUpsideDown,
  })
  return [lay(first, 0, isFirstDown), lay(second, turn?.turnDeg ?? 0, isSecondDown)]
}

function differenceOf(
  first: ComparedReading,
  second: ComparedReading,
  as: { readonly laidFirst: LaidFace; readonly laidSecond: LaidFace; readonly isTurned: boolean },
): FaceDifference | NoDifference {
  const [one, other] = [as.laidFirst.surface, as.laidSecond.surface]
  if (one === null || other === null) return 'no-surface'
  if (!areOfOneLand(first, second)) return 'other-land'
  const areSignsKnown = first.wholeFace.isSignKnown && second.wholeFace.isSignKnown
  if (!as.isTurned && !areSignsKnown) return 'sign-open'
  const map = differenceMap(one, other, mapSize)
  const { peakToValley } = peakAndValley(map)
  const expandedPictureUm = Math.hypot(...[first, second].map((of) => pictureUm(of.uncertainty)))
  const radiusMm = first.wholeFace.outerDiameterMm / 2
  return {
    map: { ...map, radii: map.radii.map((radius) => radius * radiusMm) },
    peakToValleyUm: peakToValley,
    rmsUm: mapRms(map),
    expandedPictureUm,
    isWithin: atMost({ value: peakToValley, limit: expandedPictureUm }),
  }
}

function agreementOf(first: ComparedReading, second: ComparedReading): FaceAgreement | null {
  const figure = ({ flatnessUm, uncertainty }: ComparedReading) =>
    flatnessUm === null || uncertainty === null
      ? null
      : { valueUm: flatnessUm, expandedUm: uncertainty.expandedUncertainty }
  const [one, other] = [figure(first), figure(second)]
  return one === null || other === null ? null : faceAgreement(one, other)
}

/** From the lowest to the highest place of both, so that equal heights are drawn equal. */
function rangeOf(faces: readonly LaidFace[]): WholeFaceComparison['range'] {
  const ends = faces
    .map(mapOfWholeFace)
    .filter((map) => map !== null)
    .map(peakAndValley)
  if (ends.length === 0) return null
  const lowUm = Math.min(...ends.map((one) => one.valley.height))
  const highUm = Math.max(...ends.map((one) => one.peak.height))
  return lowUm < highUm ? { lowUm, highUm } : null
}
