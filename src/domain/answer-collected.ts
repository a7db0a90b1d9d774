import { collectedLeak } from '../science/leak/collected-leak.ts'
import { methods } from './methods.ts'
import type { CollectedRequest } from './parse-collected-request.ts'

const sPerH = 3600

/** The steady leakage that was collected, by mass and volume an hour. No record is made. */
export function answerCollected({ readings, densityKgPerM3 }: CollectedRequest) {
  const leak = collectedLeak(readings)
  const { steadyGPerS, confidence95GPerS, runIn, steadyFromS, setAside, cautions } = leak
  const steadyGPerH = steadyGPerS === null ? null : steadyGPerS * sPerH
  return {
    steadyGPerH,
    // 1 kg/m3 is a thousandth of a g/mL.
    steadyMlPerH: steadyGPerH === null ? null : steadyGPerH / (densityKgPerM3 / 1000),
    confidence95GPerH: confidence95GPerS?.map((one) => one * sPerH) ?? null,
    ...(confidence95GPerS === null ? {} : expandedOf(confidence95GPerS)),
    runIn,
    steadyFromS,
    setAside,
    cautions,
    method: methods.leakCollected,
  }
}

/** Half of the interval, for who wants an uncertainty: by ranks it need not be symmetric. */
function expandedOf([low, high]: readonly [number, number]) {
  return { expandedUncertaintyGPerH: ((high - low) / 2) * sPerH }
}
