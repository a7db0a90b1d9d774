import { cyclesBefore } from './cycles-before.ts'
import type { PlacedCycle } from './placed-cycles.ts'

/**
 * The cycle that gave a face the form in which it was read: as cycleBefore, but matting, which
 * leaves the form as it is, is passed over.
 */
export function lapBefore(...of: Parameters<typeof cyclesBefore>): PlacedCycle | null {
  return cyclesBefore(...of).findLast((one) => one.cycle.purpose !== 'matt') ?? null
}
