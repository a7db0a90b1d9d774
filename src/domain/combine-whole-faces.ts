import { combineSurfaces } from '../science/surface/combine-surfaces.ts'
import { usualCoverageFactor } from '../science/uncertainty/coverage-factor.ts'
import { asUncertainty } from './as-uncertainty.ts'
import { combinedBudget } from './combined-budget.ts'
import type { ComputedWholeFace } from './compute-whole-face.ts'
import { faceDisagreement } from './face-disagreement.ts'
import { type FaceTurn, faceTurn } from './face-turn.ts'
import type { FlatnessReading } from './flatness.ts'
import { laySurface } from './lay-surface.ts'
import { methods } from './methods.ts'
import { pictureUncertaintyUm } from './picture-uncertainty-um.ts'
import type { WholeFace } from './whole-face.ts'
import { wholeFlatness } from './whole-flatness.ts'

/** What a combination takes of a reading. */
export type CombinablePart = Pick<
  FlatnessReading,
  'id' | 'flatnessUm' | 'uncertainty' | 'wavelengthNm' | 'bandHeightUm' | 'viewingAngleDeg'
> & { readonly wholeFace: WholeFace | null }

export type CombinedWholeFace = ComputedWholeFace & {
  /** How each part lies on the first, which lies as it was taken. */
  readonly turns: readonly (FaceTurn | null)[]
  /** Above 1 the parts differ more than expected, and the uncertainty was enlarged. */
  readonly disagreementRatio: number
}

/** Below it a picture would know everything: 1e-6 um. */
const leastPictureUm = 1e-6

/**
 * Combines readings of one face from several photographs: surfaces turned onto the first, their
 * mean weighed by 1 / u^2 of what each picture alone leaves open, and the figures of that mean. The
 * first is the oldest part whose sign is known, else the oldest: the order given does not matter.
 *
 * Recomputed from the records of the parts it is the same, bit for bit.
 * @param readings two or more with a surface, of one face, lamp and lap, their ratios of radii
 *   within 0.02: see combinationRefusal
 * @throws RangeError outside of that
 * Source: weighted mean, common practice, no source; budget as combinedBudget.
 */
export function combineWholeFaces(readings: readonly CombinablePart[]): CombinedWholeFace {
  const parts = inOrder(readings.map(partOf))
  const [first] = parts
  if (first === undefined || parts.length < 2) {
    throw new RangeError(`combineWholeFaces requires 2 parts or more, got ${parts.length}`)
  }
  const turns = parts.map((one, i) => (i === 0 ? null : faceTurn(first, one)))
  const isDown = signsOf(parts, turns)
  const sum = parts.reduce((total, one) => total + one.pictureUm ** -2, 0)
  const weights = parts.map((one) => one.pictureUm ** -2 / sum)
  const laid = parts.map(({ surface }, i) => {
    const isUpsideDown = isDown[i] as boolean
    return laySurface(surface, { turnDeg: turns[i]?.turnDeg ?? 0, isUpsideDown })
  })
  const surface = combineSurfaces(laid, weights)
  const weighed = parts.map((one, i) => ({ ...one, weight: weights[i] as number }))
  const disagreementRatio = faceDisagreement(
    weighed.map((one, i) => ({ ...one, surface: laid[i] as typeof surface })),
    surface,
  )
  const areIndependent = new Set(parts.flatMap((one) => one.photoIds)).size === parts.length
  const budget = combinedBudget(weighed, { areIndependent, ratio: disagreementRatio })
  const isSignKnown = parts.some((one) => one.isSignKnown)
  const faces = parts.map((one) => one.reading.wholeFace)
  const { outerDiameterMm, innerDiameterMm } = faces[0] as WholeFace
  const whole = wholeFlatness({
    surface,
    isSignKnown,
    // Surfaces of records are in um already.
    bandHeightUm: 1,
    outerDiameterMm,
    budgetOf: () => budget,
  })
  const newest = parts.reduce((a, b) => (b.reading.id > a.reading.id ? b : a)).reading
  const leftOut = new Set(parts.flatMap(({ reading }) => reading.uncertainty?.leftOut ?? []))
  const uncertainty = asUncertainty(budget, [...leftOut], null)
  const qualities = faces.map((one) => one.quality)
  return {
    computed: {
      wavelengthNm: newest.wavelengthNm,
      bandHeightUm: newest.bandHeightUm,
      bands: whole.flatnessUm / newest.bandHeightUm,
      flatnessUm: whole.flatnessUm,
      form: whole.form,
      standardUncertaintyUm: uncertainty.standardUncertainty,
      uncertainty,
      method: methods.flatnessCombined,
    },
    wholeFace: {
      source: {
        kind: 'combined',
        parts: weighed.map(({ reading, weight }, i) => ({
          readingId: reading.id,
          turnDeg: turns[i]?.turnDeg ?? 0,
          isUpsideDown: isDown[i] as boolean,
          weight,
        })),
      },
      outerDiameterMm,
      innerDiameterMm,
      surface,
      isSignKnown,
      minimumZoneUm: whole.flatnessMinimumZoneUm,
      rmsUm: whole.rmsUm,
      taperUm: whole.taperUm,
      lobes: whole.lobes,
      quality: qualities.every((one) => one !== null) ? Math.min(...qualities) : null,
      cautions: [...new Set(faces.flatMap((one) => one.cautions))],
      seen: null,
    },
    viewingAngleDeg: newest.viewingAngleDeg,
    turns,
    disagreementRatio,
  }
}

type Part = ReturnType<typeof partOf>

function partOf(reading: CombinablePart) {
  const { wholeFace, uncertainty, flatnessUm } = reading
  const surface = wholeFace?.surface ?? null
  if (wholeFace === null || surface === null || uncertainty === null || flatnessUm === null) {
    throw new RangeError(`combineWholeFaces requires a surface of the reading ${reading.id}`)
  }
  const { source, isSignKnown } = wholeFace
  const pictureUm = Math.max(leastPictureUm, pictureUncertaintyUm(uncertainty.budget))
  return {
    reading: { ...reading, wholeFace },
    surface,
    isSignKnown,
    flatnessUm,
    budget: uncertainty.budget,
    pictureUm,
    expandedPictureUm: usualCoverageFactor * pictureUm,
    photoIds: 'photoId' in source ? [source.photoId] : [],
  }
}

function inOrder(parts: readonly Part[]): readonly Part[] {
  return [...parts].sort(
    (a, b) => Number(b.isSignKnown) - Number(a.isSignKnown) || a.reading.id - b.reading.id,
  )
}

/** Known signs stand first, so no known sign is ever changed. */
function signsOf(parts: readonly Part[], turns: readonly (FaceTurn | null)[]): boolean[] {
  return parts.map((one, i) => !one.isSignKnown && (turns[i]?.isOpposite ?? false))
}
