import { pressureChange } from '../science/leak/pressure-change.ts'
import { pressureTrace } from '../science/leak/pressure-trace.ts'
import { methods } from './methods.ts'
import type { PressureChangeRequest } from './parse-pressure-change-request.ts'

/** The leak of a closed volume; of a trace that had not settled, no leak. No record is made. */
export function answerPressureChange(request: PressureChangeRequest) {
  const { volumeL, referenceTemperatureC, ends, trace, uncertainties } = request
  const method = methods.leakPressureChange
  const given = { volumeL, referenceTemperatureC }
  const answer =
    ends === null
      ? pressureTrace({ ...given, trace: trace ?? [] }, uncertainties)
      : pressureChange({ ...given, ...ends }, uncertainties)
  if (!('uncertainty' in answer) || answer.uncertainty === undefined) return { ...answer, method }
  const { uncertainty, ...rest } = answer
  return { ...rest, ...uncertainty, method }
}
