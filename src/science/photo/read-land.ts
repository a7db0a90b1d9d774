import { bandTables } from './band-tables.ts'
import { type FitQuality, fitQuality } from './fit-quality.ts'
import { hiddenArc } from './hidden-arc.ts'
import { type LandCells, landCells } from './land-cells.ts'
import type { Face } from './prepare-face.ts'
import { relativeLight } from './relative-light.ts'
import { type RingSamples, sampleRing } from './sample-ring.ts'
import { type BandSolution, solveBands } from './solve-bands.ts'

/** The light of a land with the fit of its bands. */
export interface LandReading {
  readonly samples: RingSamples
  readonly seenFrom: number
  readonly seenTo: number
  readonly solution: BandSolution
  readonly quality: FitQuality
  /** The longest part of the ring that is hidden, in degrees. */
  readonly hiddenArcDeg: number
  /** How each rival explains the land. */
  readonly rivalQualities: readonly FitQuality[]
}

const sampleCount = 6500
/** What is left out at an edge that was not followed, in units of the outer radius. */
const usualMargin = 0.014

/** Below this there are no bands to search longer for. */
const leastSwing = 0.045

/** Closer where an edge was followed: three pixels for the blur, or what its steps scatter by. */
function margins(face: Face): { readonly from: number; readonly to: number } {
  const radius = Math.sqrt(face.outer.ellipse.rx * face.outer.ellipse.ry)
  const margin = (edge: Face['outer']) =>
    edge.isSnapped
      ? Math.min(usualMargin, Math.max(0.007, 3 / radius, 5 * edge.scatter))
      : usualMargin
  return { from: face.radiusRatio + margin(face.inner), to: 1 - margin(face.outer) }
}

/**
 * Whether a fit can stand as it is; if not, a longer search is worth its time. A surface folded at
 * a place where the bands turn explains nearly all of a narrow land, so nearly all is not enough.
 */
const isGood = (quality: FitQuality) =>
  quality.explained > 0.985 && quality.explainedShare >= 0.97 && quality.edgeShare >= 0.95

/**
 * Reads the light of a land and fits its bands; searches longer when the first fit does not explain
 * the land.
 *
 * @param face the land
 * @param onProgress told the share done, from 0 to 1
 * @returns the fit with what it leaves open; null where there is too little to fit
 * Source: as solveBands.
 * @example readLand({ kind: 'face', channel: { light: new Float32Array(9), width: 3, height: 3 },
 *   outer: { ellipse: { cx: -9, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }, isSnapped: false,
 *   scatter: 0, share: 0, moved: 0 }, inner: { ellipse: { cx: -9, cy: 1, rx: 0.5, ry: 0.5,
 *   rotationDeg: 0 }, isSnapped: false, scatter: 0, share: 0, moved: 0 }, radiusRatio: 0.5,
 *   axisRatio: 1, clippedShare: 0, colourAgreement: 1 }, () => {}) // null
 */
export function readLand(face: Face, onProgress: (share: number) => void): LandReading | null {
  const { from, to } = margins(face)
  const samples = sampleRing(face.channel, face.outer.ellipse, { from, to, wanted: sampleCount })
  const relative = relativeLight(samples)
  const land = landCells(samples, { from, to })
  onProgress(0.2)
  const { radiusRatio } = face
  const attempt = (isThorough: boolean): LandReading | null => {
    const solution = solveBands(samples, relative, { radiusRatio, isThorough })
    if (solution === null) return null
    return judged({ samples, relative, land, radiusRatio, seen: { from, to }, solution })
  }
  const first = attempt(false)
  if (first === null || isGood(first.quality)) return first
  if (Math.min(first.quality.swing, first.solution.lightSwing) < leastSwing) return first
  onProgress(0.5)
  const second = attempt(true)
  if (second === null) return first
  const worth = ({ quality }: LandReading) => quality.explainedShare * quality.usableShare
  const isBetter = worth(second) > worth(first)
  return isBetter ? second : first
}

function judged(input: {
  readonly samples: RingSamples
  readonly relative: Float64Array
  readonly land: LandCells
  readonly radiusRatio: number
  readonly seen: { readonly from: number; readonly to: number }
  readonly solution: BandSolution
}): LandReading {
  const { samples, relative, land, radiusRatio, seen, solution } = input
  const { tables, indexes } = solution
  const third = indexes.filter((_, i) => i % 3 === 0)
  const fewer = bandTables(samples, relative, { radiusRatio, level: 3, indexes: third })
  const thirdOfTotals = land.totals.map((total) => Math.floor(total / 3))
  return {
    samples,
    seenFrom: seen.from,
    seenTo: seen.to,
    solution,
    hiddenArcDeg: hiddenArc(samples, land, solution.lightSwing),
    quality: fitQuality(tables, solution.fine.model, { land, indexes }),
    rivalQualities: solution.rivals.map((rival) =>
      fitQuality(fewer, rival.model, {
        land: { ...land, totals: thirdOfTotals },
        indexes: third,
      }),
    ),
  }
}
