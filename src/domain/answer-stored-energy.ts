import { storedEnergy } from '../science/leak/stored-energy.ts'
import { methods } from './methods.ts'
import type { StoredEnergyRequest } from './parse-stored-energy-request.ts'

/** What gas under pressure would let go. No record is made. */
export function answerStoredEnergy(request: StoredEnergyRequest) {
  return { ...storedEnergy(request), method: methods.storedEnergy }
}
