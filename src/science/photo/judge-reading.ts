import type { PhotoRefusal, PhotoRefusalReason } from './photo-refusal.ts'

/** What the gates ask about a fit. */
export interface FitFigures {
  /** Swing of the light before the fit, and of the fitted bands, relative to the mean light. */
  readonly lightSwing: number
  readonly swing: number
  readonly spread: number
  readonly explained: number
  readonly usableShare: number
  readonly explainedShare: number
  readonly edgeShare: number
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

/**
 * Asks the gates of an honest figure, in the order of causes.
 *
 * @param figures of the fit
 * @returns the first gate that does not hold, with the figure and its limit; null when all hold
 * Source: limits chosen on synthetic photographs, no published source.
 * @example judgeReading({ lightSwing: 0.01, swing: 0.01, spread: 0.01, explained: 0.1, usableShare: 1,
 *   explainedShare: 0, edgeShare: 0, doubtfulInRow: 9, tiltBands: 6, pixelsPerBand: 50, flatnessBands: 1,
 *   expandedUncertaintyBands: 0.1, rivals: [] })?.reason // no-clear-bands
 */
export function judgeReading(figures: FitFigures): PhotoRefusal | null {
  const { swing, spread, flatnessBands, expandedUncertaintyBands } = figures
  const noise = spread / swing
  const rival = figures.rivals.find(
    (one) =>
      one.spread < 2.5 * spread &&
      Math.abs(one.flatnessBands - flatnessBands) > Math.max(0.1, 0.1 * flatnessBands),
  )
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
  return (
    // A slow background passes for a part of a band; what counts is what the light itself does.
    isAtLeast('no-clear-bands', Math.min(swing, figures.lightSwing), 0.045) ??
    isAtMost('no-clear-bands', swing, 1.5) ??
    // Noise beyond a third of the swing: the fit found nothing, its tilt and pitch mean nothing.
    isAtMost('no-clear-bands', noise, 0.35) ??
    isAtLeast('too-few-bands', figures.tiltBands, 4.5) ??
    isAtLeast('bands-too-fine', figures.pixelsPerBand, 5) ??
    isAtLeast('face-partly-hidden', figures.usableShare, 0.85) ??
    isAtLeast('model-does-not-fit', figures.explained, 0.975) ??
    isAtLeast('model-does-not-fit', figures.explainedShare, 0.95) ??
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
    isAtMost('uncertainty-too-large', expandedUncertaintyBands, mostUncertainty)
  )
}
