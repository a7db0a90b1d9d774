import { annularTerms } from '../surface/annular-terms.ts'
import { bandLines } from './band-lines.ts'
import { bandResiduals } from './band-residuals.ts'
import { edgeWidth } from './edge-width.ts'
import { gapSign, type WedgeSeen } from './gap-sign.ts'
import { judgeReading } from './judge-reading.ts'
import type { Picture } from './linear-channels.ts'
import { peakToValley } from './peak-to-valley.ts'
import type { PhotoCaution, PhotoReading } from './photo-reading.ts'
import type { PhotoRefusal } from './photo-refusal.ts'
import { photoUncertainty } from './photo-uncertainty.ts'
import { type EdgeAsSet, type Face, prepareFace } from './prepare-face.ts'
import { type LandReading, readLand } from './read-land.ts'
import { residualMap } from './residual-map.ts'
import { type SurfaceGrid, surfaceGrid } from './surface-grid.ts'

/** What is known beside the picture. */
export interface PhotoOptions {
  readonly outer: EdgeAsSet
  readonly inner: EdgeAsSet
  /** Inner over outer diameter as measured on the part, a check of the edges. */
  readonly radiusRatio?: number | undefined
  readonly wedge?: WedgeSeen | undefined
  /** From the normal; taken from the shape of the outer edge when absent. */
  readonly viewingAngleDeg?: number | undefined
  readonly onProgress?: ((share: number) => void) | undefined
}

/** Set edges that disagree with the part by more than this are those of something else. */
const mostRatioError = 0.05

interface Grids {
  readonly all: SurfaceGrid
  readonly seen: SurfaceGrid
  readonly coarse: SurfaceGrid
}

function gridsOf(face: Face, land: LandReading): Grids {
  const { radiusRatio } = face
  const { seenFrom, seenTo } = land
  const whole = { radiusRatio, seenFrom, seenTo, from: radiusRatio, to: 1 }
  return {
    all: surfaceGrid({ ...whole, level: 4 }),
    seen: surfaceGrid({ ...whole, level: 4, from: seenFrom, to: seenTo }),
    coarse: surfaceGrid({ ...whole, level: 3 }),
  }
}

/** The steepest change of order, per outer radius, but for the steepest twentieth of the land. */
function finestPitch(grid: SurfaceGrid, gap: Float64Array): number {
  const { radii, angleCount, termCount, basis } = grid
  const orders = Float64Array.from({ length: radii.length * angleCount }, (_, point) => {
    let order = 0
    for (let k = 0; k < termCount; k++) {
      order += (gap[1 + k] ?? 0) * (basis[point * termCount + k] as number)
    }
    return order
  })
  const at = (i: number, j: number) => orders[i * angleCount + (j % angleCount)] as number
  const slopes: number[] = []
  for (let i = 0; i + 1 < radii.length; i++) {
    const r = radii[i] as number
    const across = (radii[i + 1] as number) - r
    for (let j = 0; j < angleCount; j++) {
      const radial = (at(i + 1, j) - at(i, j)) / across
      const around = ((at(i, j + 1) - at(i, j)) * angleCount) / (2 * Math.PI * r)
      slopes.push(Math.hypot(radial, around))
    }
  }
  slopes.sort((a, b) => a - b)
  return slopes[Math.floor(0.95 * slopes.length)] as number
}

/** Rise of the ring means from the inner to the outer edge, by their straight line in r. */
function outwardsRise(grid: SurfaceGrid, gap: Float64Array): number {
  const { radii, angleCount, termCount, basis } = grid
  const means = radii.map((_, i) => {
    let sum = 0
    for (let j = 0; j < angleCount; j++) {
      const row = (i * angleCount + j) * termCount
      for (let k = 0; k < termCount; k++) {
        sum += ((gap[1 + k] ?? 0) * (basis[row + k] as number)) / angleCount
      }
    }
    return sum
  })
  const middle = radii.reduce((a, b) => a + b, 0) / radii.length
  const top = radii.reduce((sum, r, i) => sum + (r - middle) * (means[i] as number), 0)
  const square = radii.reduce((sum, r) => sum + (r - middle) ** 2, 0)
  return (top / square) * ((radii.at(-1) as number) - (radii[0] as number))
}

function residualsOf(land: LandReading): PhotoReading['residuals'] {
  const { solution, samples, seenFrom, seenTo, quality } = land
  const { residuals } = bandResiduals(solution.tables, solution.fine.model)
  const pick = (values: Float64Array) => solution.indexes.map((i) => values[i] as number)
  return residualMap(
    { xs: pick(samples.xs), ys: pick(samples.ys), residuals },
    { from: seenFrom, to: seenTo, swing: quality.swing },
  )
}

function cautionsOf(face: Face, land: LandReading): PhotoCaution[] {
  const cautions: PhotoCaution[] = []
  if (land.quality.doubtfulSectors.length > 0) cautions.push('local-defect-or-step')
  if (!face.outer.isSnapped) cautions.push('outer-edge-as-set')
  if (!face.inner.isSnapped) cautions.push('inner-edge-as-set')
  return cautions
}

function refusalOfRatio(face: Face, radiusRatio: number | undefined): PhotoRefusal | null {
  if (radiusRatio === undefined) return null
  const off = Math.abs(face.radiusRatio - radiusRatio)
  if (off <= mostRatioError) return null
  return { kind: 'refused', reason: 'edges-not-found', measured: off, limit: mostRatioError }
}

/**
 * Reads the flatness of a ring from one picture of its light bands.
 *
 * gap W in bands fits the light by A + B (cos 2 pi W + k cos 4 pi W); height = -W / (b / a)
 *
 * @param picture upright
 * @param options edges as they were set and what is known beside the picture
 * @returns the surface with its flatness and uncertainty, in bands of the lamp at normal view; or a
 *   refusal with its reason. The same picture and options give the same figures, bit for bit
 * Validity: one smooth land under one lamp of one colour; uncertainty of the optical flat, the lamp
 *   and temperature is not contained.
 * Source: direct model fit; M. Takeda, H. Ina, S. Kobayashi (1982) and V. N. Mahajan (1981) for its
 *   parts; limits chosen on synthetic photographs.
 * @example readPhoto({ data: new Uint8Array(3), width: 1, height: 1 },
 *   { outer: [], inner: [] }).kind // refused
 */
export function readPhoto(picture: Picture, options: PhotoOptions): PhotoReading | PhotoRefusal {
  const onProgress = options.onProgress ?? (() => {})
  const face = prepareFace(picture, options)
  if (face.kind === 'refused') return face
  const ratioRefusal = refusalOfRatio(face, options.radiusRatio)
  if (ratioRefusal !== null) return ratioRefusal
  onProgress(0.1)
  const land = readLand(face, onProgress)
  if (land === null) {
    return { kind: 'refused', reason: 'no-clear-bands', measured: null, limit: null }
  }
  onProgress(0.9)
  return resultOf(face, land, options)
}

/** Other surfaces that explain nearly all of the land: their flatness and robust residual. */
function rivalsOf(land: LandReading, coarse: SurfaceGrid, axisRatio: number) {
  return land.solution.rivals.flatMap((rival, i) => {
    const its = land.rivalQualities[i] as LandReading['quality']
    if (its.explainedShare < 0.93) return []
    const flatnessBands = peakToValley(coarse, rival.model.gap.subarray(1)) / axisRatio
    return [{ flatnessBands, spread: its.spread }]
  })
}

function resultOf(
  face: Face,
  land: LandReading,
  options: PhotoOptions,
): PhotoReading | PhotoRefusal {
  const { solution, quality, seenFrom, seenTo } = land
  const { viewingAngleDeg } = options
  const axisRatio =
    viewingAngleDeg === undefined ? face.axisRatio : Math.cos((viewingAngleDeg * Math.PI) / 180)
  const grids = gridsOf(face, land)
  const { gap } = solution.fine.model
  const tiltBands = 2 * Math.hypot(gap[1] as number, gap[2] as number)
  const areEdgesFollowed = face.outer.isSnapped && face.inner.isSnapped
  const uncertainty = photoUncertainty({ ...solution, spread: quality.spread }, grids, {
    axisRatio,
    areEdgesFollowed,
    tiltBands,
  })
  const standard = Math.sqrt(Object.values(uncertainty).reduce((sum, part) => sum + part ** 2, 0))
  const flatness = peakToValley(grids.all, gap.subarray(1)) / axisRatio
  const radiusPx = Math.sqrt(face.outer.ellipse.rx * face.outer.ellipse.ry)
  const refusal = judgeReading({
    ...quality,
    lightSwing: solution.lightSwing,
    colourAgreement: face.colourAgreement,
    hiddenArcDeg: land.hiddenArcDeg,
    isAnEdgeFollowed: face.outer.isSnapped || face.inner.isSnapped,
    edgeWidth: edgeWidth(face.channel, face.outer.ellipse),
    tiltBands,
    pixelsPerBand: radiusPx / finestPitch(grids.seen, gap),
    flatnessBands: flatness,
    expandedUncertaintyBands: 2 * standard,
    rivals: rivalsOf(land, grids.coarse, axisRatio),
  })
  if (refusal !== null) return refusal
  const outwards = outwardsRise(grids.all, gap)
  const seenSign = gapSign(
    { tiltX: gap[1] as number, tiltY: gap[2] as number, outwards },
    options.wedge,
  )
  // Without an answer the map is turned so that the outer edge is the higher one: always alike.
  const sign = seenSign === 0 ? (outwards > 0 ? -1 : 1) : seenSign
  return {
    kind: 'read',
    surface: {
      radiusRatio: face.radiusRatio,
      level: 4,
      coefficients: annularTerms(4).map((_, k) =>
        k < 2 ? 0 : (-sign * (gap[1 + k] as number)) / axisRatio,
      ),
      seenFrom,
      seenTo,
    },
    gap: {
      radiusRatio: face.radiusRatio,
      level: 4,
      gap: Array.from(gap, (one) => (sign * one) / axisRatio),
      axisRatio,
    },
    isSignKnown: seenSign !== 0,
    peakToValleyBands: flatness,
    standardUncertaintyBands: standard,
    uncertainty,
    tiltBands,
    tiltDirectionDeg:
      (Math.atan2(sign * (gap[2] as number), sign * (gap[1] as number)) * 180) / Math.PI,
    quality: Math.min(quality.explained, quality.explainedShare, quality.usableShare),
    explained: quality.explained,
    noiseOverSwing: quality.spread / quality.swing,
    outer: face.outer.ellipse,
    inner: face.inner.ellipse,
    isOuterFollowed: face.outer.isSnapped,
    isInnerFollowed: face.inner.isSnapped,
    cautions: cautionsOf(face, land),
    doubtfulDeg: quality.doubtfulSectors.map((sector) => sector * 10 + 5),
    bandLines: bandLines(gap, {
      outer: face.outer.ellipse,
      radiusRatio: face.radiusRatio,
      seenFrom,
      seenTo,
    }),
    residuals: residualsOf(land),
  }
}
