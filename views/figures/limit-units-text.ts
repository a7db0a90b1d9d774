import type { Characteristic } from '../../src/domain/characteristic.ts'
import type { Limit } from '../../src/domain/limit-set.ts'
import type { LimitUnit } from '../../src/domain/limit-unit.ts'
import { limitInUnitText } from './limit-in-unit-text.ts'

const machine = ['mm', 'in', 'um-tir'] as const

/** The units in which the trade reads limits of a characteristic. */
const shownUnits: Readonly<Record<Characteristic, readonly LimitUnit[]>> = {
  flatness: ['um', 'uin', 'helium-bands'],
  roughness: ['um', 'uin'],
  'face-height': ['mm', 'in'],
  'face-parallelism': ['um', 'uin'],
  'shaft-run-out': machine,
  'sleeve-run-out': machine,
  'shaft-straightness': ['mm', 'in', 'um'],
  'radial-lift': ['mm', 'in', 'um'],
  'end-play': ['mm', 'in', 'um'],
  'chamber-face-squareness': machine,
  'seat-face-squareness': machine,
  'register-concentricity': machine,
  'static-drop': ['kPa', 'bar', 'psi'],
  'static-leak-rate': ['pa-m3-per-s', 'ml-per-min', 'mbar-l-per-s'],
  'liquid-leak-mass': ['g-per-h', 'g-per-day', 'oz-per-h'],
  'liquid-leak-volume': ['ml-per-h'],
  'vapour-concentration': ['ml-per-m3'],
}

/**
 * A limit in each unit of the trade.
 * @example limitUnitsText(threeBands)[2] // ≤ 3.00 helium bands
 */
export function limitUnitsText(
  limit: Pick<Limit, 'characteristic' | 'lower' | 'upper' | 'perMmOf'>,
): readonly string[] {
  return unitsOf(limit).map((unit) => limitInUnitText(limit, unit))
}

function unitsOf(limit: Pick<Limit, 'characteristic' | 'perMmOf'>): readonly LimitUnit[] {
  const { characteristic, perMmOf } = limit
  if (perMmOf === null) return shownUnits[characteristic]
  return characteristic === 'flatness'
    ? ['um-per-mm', 'helium-bands-per-mm']
    : ['um-per-mm', 'in-per-in']
}
