import type { MeasuredCharacteristic } from './characteristic.ts'
import type { Bounds } from './fields.ts'

const movement: Bounds = { min: 0, max: 5000 }

/**
 * What the trade commonly reads, in µm (common practice, no source): beyond it the user is asked to
 * confirm, since it is more often a slip of the unit.
 */
export const measuredWindowUm: Readonly<Record<MeasuredCharacteristic, Bounds>> = {
  roughness: { min: 0.002, max: 20 },
  'face-height': { min: 100, max: 200_000 },
  'face-parallelism': { min: 0, max: 1000 },
  'shaft-run-out': movement,
  'sleeve-run-out': movement,
  'shaft-straightness': movement,
  'radial-lift': movement,
  'end-play': movement,
  'chamber-face-squareness': movement,
  'seat-face-squareness': movement,
  'register-concentricity': movement,
}
