import { exactFactors } from './exact-factors.ts'

/** The pressure units a gauge in the shop may show. */
export const pressureUnits = ['Pa', 'kPa', 'MPa', 'mbar', 'bar', 'psi', 'atm', 'Torr'] as const

export type PressureUnit = (typeof pressureUnits)[number]

/** Pascals in one of each unit. */
export const pascalsPerUnit: Readonly<Record<PressureUnit, number>> = {
  Pa: 1,
  kPa: 1000,
  MPa: 1_000_000,
  mbar: exactFactors.bar.value / 1000,
  bar: exactFactors.bar.value,
  psi: exactFactors.psi.value,
  atm: exactFactors.atmosphere.value,
  Torr: exactFactors.torr.value,
}
