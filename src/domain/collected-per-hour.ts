import type { CollectedLeak } from '../science/leak/collected-leak.ts'

export type CollectedPerHour = {
  readonly steadyGPerH: number | null
  /** Null too where no density is known. */
  readonly steadyMlPerH: number | null
  readonly confidence95GPerH: readonly [number, number] | null
}

const sPerH = 3600

/** A steady leakage as it is told: by the hour, in mass and in volume. */
export function collectedPerHour(
  { steadyGPerS, confidence95GPerS }: CollectedLeak,
  densityKgPerM3: number | null,
): CollectedPerHour {
  const steadyGPerH = steadyGPerS === null ? null : steadyGPerS * sPerH
  const [low, high] = confidence95GPerS ?? []
  return {
    steadyGPerH,
    steadyMlPerH:
      // 1 kg/m3 is a thousandth of a g/mL.
      steadyGPerH === null || densityKgPerM3 === null
        ? null
        : steadyGPerH / (densityKgPerM3 / 1000),
    confidence95GPerH: low === undefined || high === undefined ? null : [low * sPerH, high * sPerH],
  }
}
