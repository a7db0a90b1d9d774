import { alignSurfaces } from '../science/surface/align-surfaces.ts'
import type { AnnularSurface } from '../science/surface/annular-surface.ts'
import { aroundOfSurface } from './around-of-surface.ts'

/** A surface that is to be laid on another one, in um. */
export type TurnableFace = {
  readonly surface: AnnularSurface
  readonly isSignKnown: boolean
  /** Of its picture alone; heights below it are no mark. */
  readonly expandedPictureUm: number
}

/**
 * - found: one turn fits better than every other
 * - guess: another turn, or the face upside down, fits nearly as well
 * - no-mark: what differs around a face is within its uncertainty, so every turn fits
 * - unlike: both have a form, and no turn makes one of the other
 */
export type TurnStanding = 'found' | 'guess' | 'no-mark' | 'unlike'

export type FaceTurn = {
  readonly standing: TurnStanding
  /** Of the second, counter-clockwise, to lie on the first; 0 without a mark. */
  readonly turnDeg: number
  /** Whether one of the two has its sign changed against the other. */
  readonly isOpposite: boolean
  /** As alignSurfaces; null where one of them has no height at all. */
  readonly likeness: number | null
  readonly rivalLikeness: number | null
}

/** Below it two forms are not called alike; chosen by us, common practice, no source. */
const leastLikeness = 0.5
/**
 * How much better the best turn has to be than its rival, of what turning can change at all. Less
 * than the 0.06 by which one wave around falls off within the 20 degrees of a rival. Ours.
 */
const leastLead = 0.05

/**
 * Finds how a second reading was turned against the first, and says what that is worth.
 * @param first, second ratios of radii within 0.02 of each other, heights in um
 */
export function faceTurn(first: TurnableFace, second: TurnableFace): FaceTurn {
  const [one, other] = [aroundOfSurface(first.surface), aroundOfSurface(second.surface)]
  if (one.peakToValley === 0 || other.peakToValley === 0) {
    const none = { likeness: null, rivalLikeness: null }
    return { standing: 'no-mark', turnDeg: 0, isOpposite: false, ...none }
  }
  const areSignsKnown = first.isSignKnown && second.isSignKnown
  const found = alignSurfaces(first.surface, second.surface, { areSignsKnown })
  const { turnDeg, isOpposite, likeness, rivalLikeness } = found
  const hasForm =
    one.peakToValley > first.expandedPictureUm && other.peakToValley > second.expandedPictureUm
  const hasMark =
    one.aroundPeakToValley > noiseUm(first, one.peakToValley) &&
    other.aroundPeakToValley > noiseUm(second, other.peakToValley)
  const reach = Math.sqrt(one.share * other.share)
  const standing =
    hasForm && likeness < leastLikeness
      ? 'unlike'
      : !hasMark
        ? 'no-mark'
        : likeness - rivalLikeness < leastLead * reach
          ? 'guess'
          : 'found'
  const isTurned = standing !== 'no-mark'
  return { standing, turnDeg: isTurned ? turnDeg : 0, isOpposite, likeness, rivalLikeness }
}

/** Rounding alone makes a perfect dish differ around by some 1e-16 of its height. */
function noiseUm({ expandedPictureUm }: TurnableFace, peakToValleyUm: number): number {
  return Math.max(expandedPictureUm, 1e-9 * peakToValleyUm)
}
