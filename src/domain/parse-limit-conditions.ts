import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import type { Bounds, Fields } from './fields.ts'
import type { LimitConditions } from './limit-set.ts'
import { pressureUnits, sealedBounds } from './pressure-units.ts'
import { faceKinds, faceMaterials } from './seal.ts'
import { services } from './service.ts'

export const conditionDiameterMm: Bounds = { min: 1, max: 5000 }
export const conditionSpeedPerMin: Bounds = { min: 1, max: 200_000 }

/** Services a limit may be written for: what was not stated can't be one. */
export const limitServices = services.filter((one) => one !== 'not-stated')

/** Reads what a limit holds for; a blank condition is none. */
export function parseLimitConditions(part: Fields, isOfFace: boolean): LimitConditions {
  const ofFace = isOfFace
    ? {
        faceMaterial: part.optionalChoice('faceMaterial', faceMaterials),
        componentKind: part.optionalChoice('componentKind', faceKinds),
      }
    : refuseFace(part)
  const diameterOverMm = part.optionalDecimal('diameterOverMm', conditionDiameterMm)
  const diameterUpToMm = part.optionalDecimal('diameterUpToMm', conditionDiameterMm)
  refuseTurned(part, 'diameterOverMm', [diameterOverMm, diameterUpToMm])
  return {
    ...ofFace,
    service: part.optionalChoice('service', limitServices),
    diameterOverMm,
    diameterUpToMm,
    ...readPressures(part),
    ...readSpeeds(part),
  }
}

/** Of the shaft, per minute. */
function readSpeeds(part: Fields): Pick<LimitConditions, 'speedOverPerMin' | 'speedUpToPerMin'> {
  const speedOverPerMin = part.optionalDecimal('speedOverPerMin', conditionSpeedPerMin)
  const speedUpToPerMin = part.optionalDecimal('speedUpToPerMin', conditionSpeedPerMin)
  refuseTurned(part, 'speedOverPerMin', [speedOverPerMin, speedUpToPerMin])
  return { speedOverPerMin, speedUpToPerMin }
}

function refuseFace(part: Fields): { faceMaterial: null; componentKind: null } {
  for (const name of ['faceMaterial', 'componentKind']) {
    if (part.isGiven(name)) part.fault(name, 'not-here')
  }
  return { faceMaterial: null, componentKind: null }
}

/** In kPa, from one unit for both ends; a unit without a pressure says nothing. */
function readPressures(part: Fields): Pick<LimitConditions, 'pressureOverKPa' | 'pressureUpToKPa'> {
  const names = ['pressureOver', 'pressureUpTo'] as const
  if (!names.some((name) => part.isGiven(name))) {
    part.optionalChoice('pressureUnit', pressureUnits)
    return { pressureOverKPa: null, pressureUpToKPa: null }
  }
  const before = part.faults.length
  const unit = part.choice('pressureUnit', pressureUnits)
  const bounds = part.faults.length > before ? anyUnit : sealedBounds[unit]
  const [over, upTo] = [
    part.optionalDecimal('pressureOver', bounds),
    part.optionalDecimal('pressureUpTo', bounds),
  ]
  refuseTurned(part, 'pressureOver', [over, upTo])
  const inKPa = (value: number | null) => (value === null ? null : pressureToKPa(value, unit))
  return { pressureOverKPa: inKPa(over), pressureUpToKPa: inKPa(upTo) }
}

const anyUnit = { min: -1e9, max: 1e9 } as const

function refuseTurned(
  part: Fields,
  name: string,
  [over, upTo]: readonly [number | null, number | null],
): void {
  if (over !== null && upTo !== null && over >= upTo) part.fault(name, 'lower-not-below')
}
