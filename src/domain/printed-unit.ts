import type { Characteristic } from './characteristic.ts'
import type { Rounding } from './figure.ts'

/** The unit that a characteristic is printed in; words for it stand in `views/words`. */
export const printedUnitIds = ['um', 'mm', 'kPa', 'paM3PerS', 'gPerH', 'mlPerH', 'mlPerM3'] as const
export type PrintedUnitId = (typeof printedUnitIds)[number]

export type PrintedUnit = {
  readonly unit: PrintedUnitId
  /** How many of the stored unit are one of the printed one. */
  readonly storedPerPrinted: number
  /** Where no uncertainty says how far the digits go. */
  readonly rounding: Rounding
}

const um: PrintedUnit = { unit: 'um', storedPerPrinted: 1, rounding: { decimals: 3 } }
const mm: PrintedUnit = { unit: 'mm', storedPerPrinted: 1000, rounding: { decimals: 3 } }

/** How results and limits of each characteristic are printed. */
export const printedUnit: Readonly<Record<Characteristic, PrintedUnit>> = {
  flatness: um,
  roughness: um,
  'face-height': mm,
  'face-parallelism': um,
  'shaft-run-out': mm,
  'sleeve-run-out': mm,
  'shaft-straightness': mm,
  'radial-lift': mm,
  'end-play': mm,
  'chamber-face-squareness': mm,
  'seat-face-squareness': mm,
  'register-concentricity': mm,
  'static-drop': { unit: 'kPa', storedPerPrinted: 1, rounding: { decimals: 2 } },
  'static-leak-rate': { unit: 'paM3PerS', storedPerPrinted: 1, rounding: { digits: 3 } },
  'liquid-leak-mass': { unit: 'gPerH', storedPerPrinted: 1, rounding: { digits: 3 } },
  'liquid-leak-volume': { unit: 'mlPerH', storedPerPrinted: 1, rounding: { digits: 3 } },
  'vapour-concentration': { unit: 'mlPerM3', storedPerPrinted: 1, rounding: { digits: 3 } },
}
