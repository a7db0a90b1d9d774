import { exactFactors } from './exact-factors.ts'

/**
 * Units that leaks of gas are given in. `Pa-m3-per-s` to `ft3-per-h` are of gas at a temperature that
 * must be named, volumes at 101.325 kPa; `sccm-…` name their state, and are a count of molecules.
 */
export const leakUnits = [
  'Pa-m3-per-s',
  'mbar-L-per-s',
  'Torr-L-per-s',
  'atm-cm3-per-s',
  'mL-per-min',
  'mL-per-h',
  'L-per-min',
  'L-per-h',
  'ft3-per-h',
  'sccm-0C',
  'sccm-15C',
  'sccm-20C',
  'sccm-60F',
  'sccm-70F',
  'scfh-60F',
  'scfh-70F',
  'mol-per-s',
  'g-per-h-air',
] as const
export type LeakUnit = (typeof leakUnits)[number]

/** One of a unit: a throughput of gas at the temperature that it is stated for, or an amount. */
export type LeakUnitFactor =
  | { readonly paM3PerS: number; readonly ofTemperatureK: number | null }
  | { readonly molPerS: number }

const atmosphere = exactFactors.atmosphere.value
const zeroK = exactFactors.celsiusZero.value
const fahrenheitK = (degrees: number) => (degrees + exactFactors.fahrenheitZero.value) / 1.8
const footM3 = (12 * exactFactors.inch.value) ** 3

/** Of gas at the temperature that is asked for. */
const atReference = (paM3PerS: number) => ({ paM3PerS, ofTemperatureK: null })
const volume = (m3PerS: number) => atReference(m3PerS * atmosphere)
const standard = (m3PerS: number, ofTemperatureK: number) => ({
  paM3PerS: m3PerS * atmosphere,
  ofTemperatureK,
})
const cm3PerMin = 1e-6 / 60

/** Mean molar mass of dry air, g/mol (28.96 in the usual tables). */
const airGPerMol = 28.96

/**
 * What one of each unit is.
 *
 * Source: exact definitions (exactFactors); 1 mbar L = 0.1 Pa m3; molar mass of air 28.96 g/mol.
 */
export const leakUnitFactors: Readonly<Record<LeakUnit, LeakUnitFactor>> = {
  'Pa-m3-per-s': atReference(1),
  'mbar-L-per-s': atReference(exactFactors.bar.value / 1e6),
  'Torr-L-per-s': atReference(exactFactors.torr.value / 1000),
  'atm-cm3-per-s': volume(1e-6),
  'mL-per-min': volume(cm3PerMin),
  'mL-per-h': volume(cm3PerMin / 60),
  'L-per-min': volume(1000 * cm3PerMin),
  'L-per-h': volume(1e-3 / 3600),
  'ft3-per-h': volume(footM3 / 3600),
  'sccm-0C': standard(cm3PerMin, zeroK),
  'sccm-15C': standard(cm3PerMin, zeroK + 15),
  'sccm-20C': standard(cm3PerMin, zeroK + 20),
  'sccm-60F': standard(cm3PerMin, fahrenheitK(60)),
  'sccm-70F': standard(cm3PerMin, fahrenheitK(70)),
  'scfh-60F': standard(footM3 / 3600, fahrenheitK(60)),
  'scfh-70F': standard(footM3 / 3600, fahrenheitK(70)),
  'mol-per-s': { molPerS: 1 },
  'g-per-h-air': { molPerS: 1 / (3600 * airGPerMol) },
}
