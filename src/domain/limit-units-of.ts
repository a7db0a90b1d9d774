import type { Characteristic } from './characteristic.ts'
import type { Bounds } from './fields.ts'
import type { PerMmOf } from './limit-set.ts'
import { isPerMmUnit, type LimitUnit, limitUnitMeaning } from './limit-unit.ts'

/** Units and what can be meant in them, in the stored unit; the first unit is the stored one. */
type LimitFamily = {
  readonly units: readonly LimitUnit[]
  readonly stored: Bounds
  /** Limits per millimetre: of which sizes, in which units, within what in µm per mm. */
  readonly perMm?: {
    readonly of: readonly PerMmOf[]
    readonly units: readonly LimitUnit[]
    readonly stored: Bounds
  }
}

const machine = {
  stored: { min: 0.5, max: 10_000 },
  perMm: {
    of: ['bore', 'shaft'],
    units: ['um-per-mm', 'mm-per-mm', 'in-per-in'],
    stored: { min: 0.01, max: 50 },
  },
} as const
/** What an indicator reads over a turn. */
const runOut: LimitFamily = { ...machine, units: ['um-tir', 'mm-tir', 'in-tir'] }
/** What is pushed, lifted or bent; sources write it with TIR and without. */
const movement: LimitFamily = {
  ...machine,
  units: ['um', 'mm', 'in', 'um-tir', 'mm-tir', 'in-tir'],
}

const families: Readonly<Record<Characteristic, LimitFamily>> = {
  flatness: {
    units: [
      'um',
      'uin',
      'helium-bands',
      'sodium-bands',
      'mercury-green-bands',
      'helium-neon-red-bands',
    ],
    stored: { min: 0.01, max: 100 },
    perMm: {
      of: ['face'],
      units: ['um-per-mm', 'helium-bands-per-mm'],
      stored: { min: 0.0001, max: 1 },
    },
  },
  roughness: { units: ['um', 'uin'], stored: { min: 0.001, max: 50 } },
  'face-height': { units: ['um', 'mm', 'in', 'uin'], stored: { min: 10, max: 500_000 } },
  'face-parallelism': { units: ['um', 'mm', 'in', 'uin'], stored: { min: 0.1, max: 5000 } },
  'shaft-run-out': runOut,
  'sleeve-run-out': runOut,
  'shaft-straightness': movement,
  'radial-lift': movement,
  'end-play': movement,
  'chamber-face-squareness': runOut,
  'seat-face-squareness': runOut,
  'register-concentricity': runOut,
  'static-drop': { units: ['kPa', 'bar', 'psi', 'mbar'], stored: { min: 0.001, max: 1000 } },
  'static-leak-rate': {
    units: ['pa-m3-per-s', 'ml-per-min', 'mbar-l-per-s', 'sccm-0c'],
    stored: { min: 0.000001, max: 100 },
  },
  'liquid-leak-mass': {
    units: ['g-per-h', 'oz-per-h', 'g-per-day'],
    stored: { min: 0.001, max: 100_000 },
  },
  'liquid-leak-volume': {
    units: ['ml-per-h', 'liquid-ml-per-min'],
    stored: { min: 0.001, max: 100_000 },
  },
  'vapour-concentration': {
    units: ['ml-per-m3', 'ppm-by-volume'],
    stored: { min: 0.1, max: 1_000_000 },
  },
}

/** The units in which limits of a characteristic are written; the first is the stored one. */
export function limitUnitsOf(characteristic: Characteristic): readonly LimitUnit[] {
  const { units, perMm } = families[characteristic]
  return [...units, ...(perMm?.units ?? [])]
}

/** The sizes that a limit per millimetre of a characteristic may be of; none: there is no such. */
export function perMmSizesOf(characteristic: Characteristic): readonly PerMmOf[] {
  return families[characteristic].perMm?.of ?? []
}

/** The unit in which a limit is stored, also one per millimetre of a size. */
export function storedLimitUnit(characteristic: Characteristic, isPerMm: boolean): LimitUnit {
  return isPerMm ? 'um-per-mm' : (families[characteristic].units[0] as LimitUnit)
}

/**
 * What can be meant by a limit in a unit (common practice, no source): the window catches slips of
 * the unit. Its ends are round in the unit that is typed, so that they read well in a sentence.
 */
export function limitBounds(characteristic: Characteristic, unit: LimitUnit): Bounds {
  const { stored, perMm } = families[characteristic]
  const { min, max } = isPerMmUnit(unit) && perMm !== undefined ? perMm.stored : stored
  const { fromStored } = limitUnitMeaning[unit]
  return { min: oneDigit(fromStored(min)), max: oneDigit(fromStored(max)) }
}

function oneDigit(value: number): number {
  return Number(value.toPrecision(1))
}
