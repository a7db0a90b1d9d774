import type { PhotoRefusal, PhotoRefusalReason } from './photo-refusal.ts'

/** What the gates ask about a fit. */
export interface FitFigures {
  /** Swing of the light before the fit, and of the fitted bands, relative to the mean light. */
  readonly lightSwing: number
  readonly swing: number
  /** How well the colours agree on where the bands are, 1 for a lamp of one colour. */
  readonly colourAgreement: number
  /** The longest part of the ring without bands, beside which bands begin at once. */
  readonly hiddenArcDeg: number
  readonly spread: number
  /** How wide the outer edge is drawn, in outer radii; see edgeWidth. */
  readonly edgeWidth: number
  readonly explained: number
  readonly usableShare: number
  readonly explainedShare: number
  readonly edgeShare: number
  /** Whether an edge at least was followed in the picture. */
  readonly isAnEdgeFollowed: boolean
  /** Unexplained sectors of 10 degrees side by side. */
  readonly doubtfulInRow: number
  readonly tiltBands: number
  /** Pixels from band to band where they stand closest, but for the closest twentieth. */
  readonly pixelsPerBand: number
  readonly flatnessBands: number
  readonly expandedUncertaintyBands: number
  /** Rivals that explain the land about as well: their flatness and robust residual. */
  readonly rivals: readonly { readonly flatnessBands: number; readonly spread: number }[]
}

const leastTiltBands = 4.5
const leastExplained = 0.975
const leastExplainedShare = 0.95
/** Ordinary pictures have 40 at most, covered ones of the suite's recipe 120 or more. */
const mostHiddenDeg = 80

/** Sharp pictures have 0.045 at most, those out of focus or moved 0.08 or more. */
const mostEdgeWidth = 0.06
/** What a picture that is not sharp looks like. */
const causedByBlur: readonly PhotoRefusalReason[] = [
  'no-clear-bands',
  'too-few-bands',
  'bands-too-fine',
  'model-does-not-fit',
]

/**
 * Asks the gates of an honest figure, in the order of causes.
 *
 * @param figures of the fit
 * @returns the first gate that does not hold, with the figure and its limit; null when all hold
 * Source: limits chosen on synthetic photographs, no published source.
 * @example judgeReading({ lightSwing: 0.01, swing: 0.01, colourAgreement: 1, hiddenArcDeg: 0,
 *   spread: 0.01, edgeWidth: 0.03, isAnEdgeFollowed: true, explained: 0.1, usableShare: 1, explainedShare: 0, edgeShare: 0, doubtfulInRow: 9,
 *   tiltBands: 6, pixelsPerBand: 50, flatnessBands: 1, expandedUncertaintyBands: 0.1, rivals: [] }
 *   )?.reason // no-clear-bands
 */
export function judgeReading(figures: FitFigures): PhotoRefusal | null {
  const refusal = firstRefusal(figures)
  const { edgeWidth } = figures
  const canBeBlur = refusal !== null && causedByBlur.includes(refusal.reason)
  if (!canBeBlur || edgeWidth <= mostEdgeWidth) return refusal
  return { kind: 'refused', reason: 'noisy', measured: edgeWidth, limit: mostEdgeWidth }
}

function firstRefusal(figures: FitFigures): PhotoRefusal | null {
  const { swing, spread, flatnessBands, expandedUncertaintyBands } = figures
  const noise = spread / swing
  const rival = figures.rivals.find(
    (one) =>
      one.spread < 2.5 * spread &&
      Math.abs(one.flatnessBands - flatnessBands) > Math.max(0.1, 0.1 * flatnessBands),
  )
  // One band leaves calm parts too; but then the fit explains all of the land.
  const isFewButWhole =
    figures.tiltBands < leastTiltBands &&
    figures.explained >= leastExplained &&
    figures.explainedShare >= leastExplainedShare
  const isLightClear = figures.lightSwing >= 0.2
  const mostUncertainty = Math.max(0.15, 0.3 * flatnessBands)
  const isAtLeast = (
    reason: PhotoRefusalReason,
    measured: number,
    limit: number,
  ): PhotoRefusal | null =>
    measured >= limit ? null : { kind: 'refused', reason, measured, limit }
  const isAtMost = (
    reason: PhotoRefusalReason,
    measured: number,
    limit: number,
  ): PhotoRefusal | null =>
    measured <= limit ? null : { kind: 'refused', reason, measured, limit }
  const hiddenDeg = isFewButWhole ? 0 : figures.hiddenArcDeg
  // Edges that lie beside the face hide a part of it as well: then the fit is asked first.
  const noBands = isAtMost('face-partly-hidden', hiddenDeg, mostHiddenDeg)
  const unusable = isAtLeast('face-partly-hidden', figures.usableShare, 0.85)
  return (
    // A slow background passes for a part of a band; what counts is what the light itself does.
    isAtLeast('no-clear-bands', Math.min(swing, figures.lightSwing), 0.045) ??
    isAtLeast('lamp-of-many-colours', figures.colourAgreement, 0.5) ??
    (figures.isAnEdgeFollowed ? noBands : null) ??
    isAtMost('no-clear-bands', swing, 1.5) ??
    // Noise beyond a third of the swing: the fit found nothing, its tilt and pitch mean nothing.
    // Light that swings all the same shows bands, but not those of one surface.
    isAtMost(isLightClear ? 'model-does-not-fit' : 'no-clear-bands', noise, 0.35) ??
    isAtLeast('too-few-bands', figures.tiltBands, leastTiltBands) ??
    isAtLeast('bands-too-fine', figures.pixelsPerBand, 5) ??
    (figures.isAnEdgeFollowed ? unusable : null) ??
    isAtLeast('model-does-not-fit', figures.explained, leastExplained) ??
    isAtLeast('model-does-not-fit', figures.explainedShare, leastExplainedShare) ??
    isAtLeast('model-does-not-fit', figures.edgeShare, 0.9) ??
    // A chip or a scratch is narrow; bands that leave the surface over 30 degrees are another one.
    isAtMost('model-does-not-fit', figures.doubtfulInRow, 2) ??
    isAtMost('noisy', noise, 0.16) ??
    (rival === undefined
      ? null
      : {
          kind: 'refused',
          reason: 'ambiguous',
          measured: rival.flatnessBands,
          limit: flatnessBands,
        }) ??
    isAtMost('uncertainty-too-large', expandedUncertaintyBands, mostUncertainty) ??
    noBands ??
    unusable
  )
}
