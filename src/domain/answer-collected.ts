import { collectedLeak } from '../science/leak/collected-leak.ts'
import { collectedPerHour } from './collected-per-hour.ts'
import { methods } from './methods.ts'
import type { CollectedRequest } from './parse-collected-request.ts'

/** The steady leakage that was collected, by mass and volume an hour. No record is made. */
export function answerCollected({ readings, densityKgPerM3 }: CollectedRequest) {
  const leak = collectedLeak(readings)
  const perHour = collectedPerHour(leak, densityKgPerM3)
  const { runIn, steadyFromS, setAside, cautions } = leak
  return {
    ...perHour,
    ...(perHour.confidence95GPerH === null ? {} : expandedOf(perHour.confidence95GPerH)),
    runIn,
    steadyFromS,
    setAside,
    cautions,
    method: methods.leakCollected,
  }
}

/** Half of the interval, for who wants an uncertainty: by ranks it need not be symmetric. */
function expandedOf([low, high]: readonly [number, number]) {
  return { expandedUncertaintyGPerH: (high - low) / 2 }
}
