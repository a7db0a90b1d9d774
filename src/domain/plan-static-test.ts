import { type StoredEnergy, storedEnergy } from '../science/leak/stored-energy.ts'
import { computeStaticTest, type StaticTestFigures } from './compute-static-test.ts'
import type { Instrument } from './instrument.ts'
import { smallestSeenLeak } from './smallest-seen-leak.ts'
import type { NewStaticTest } from './static-test.ts'
import { staticTestAccuracy } from './static-test-accuracy.ts'

/** What is known of a hold before the gas is let in. */
export type PlannedStaticTest = {
  /** Of air or nitrogen; 0 for a hold that does not begin above the air around. */
  readonly energy: StoredEnergy
  /** Where it was found by expansion; null where it was stated. */
  readonly expandedVolumeL: number | null
  /** Null where the hold time is not entered, or nothing is known of gauge and thermometer. */
  readonly smallestSeenPaM3PerS: number | null
  readonly limitPaM3PerS: number | null
  /** How long a hold has to last to see a leak of the limit; null where this one sees it. */
  readonly neededHoldS: number | null
}

/**
 * The energy that the gas of a hold will store, and the smallest leak that it can tell from none, as
 * if nothing leaked. What is known of a leak gets better as the hold gets longer, in proportion.
 * @param figures with the end as the start
 */
export function planStaticTest(
  figures: StaticTestFigures & Pick<NewStaticTest, 'barometerKPa' | 'expansion'>,
  by: {
    readonly setUp: Parameters<typeof staticTestAccuracy>[0]
    readonly instruments: readonly Instrument[]
    readonly limitPaM3PerS: number | null
    /** False where the hold time is a stand-in. */
    readonly isTimed: boolean
  },
): PlannedStaticTest {
  const { startPressureKPaAbs: pressureKPaAbs, volumeL, barometerKPa, durationS } = figures
  const energy = storedEnergy({ pressureKPaAbs, volumeL, ambientKPaAbs: barometerKPa })
  const { limitPaM3PerS } = by
  const accuracy = staticTestAccuracy(by.setUp, by.instruments)
  const seen = by.isTimed
    ? smallestSeenLeak(computeStaticTest(figures, accuracy).leakUncertainty)
    : null
  const isBlind = seen !== null && limitPaM3PerS !== null && limitPaM3PerS > 0
  return {
    energy,
    expandedVolumeL: figures.expansion === null ? null : volumeL,
    smallestSeenPaM3PerS: seen,
    limitPaM3PerS,
    neededHoldS: isBlind && seen > limitPaM3PerS ? (durationS * seen) / limitPaM3PerS : null,
  }
}
