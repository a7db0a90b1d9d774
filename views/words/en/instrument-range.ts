import type { InstrumentUnit } from '../../../src/domain/instrument.ts'

/** What the numbers of an instrument are in. */
export const instrumentUnitSigns: Readonly<Record<InstrumentUnit, string>> = {
  um: 'µm',
  mm: 'mm',
  in: 'in',
  kPa: 'kPa',
  bar: 'bar',
  psi: 'psi',
  C: '°C',
  L: 'L',
  'mL-per-min': 'mL/min',
  g: 'g',
  'per-min': 'r/min',
}

/** `from 0 to 400 kPa`, or the one end that its record says. */
export function instrumentRangeText(
  range: Readonly<Record<string, string | number | undefined>>,
): string {
  const { unit = '', from, to } = range
  const sign = Object.entries(instrumentUnitSigns).find(([id]) => id === unit)?.[1] ?? unit
  const ends = [from === undefined ? '' : `from ${from}`, to === undefined ? '' : `to ${to}`]
  return `${ends.filter((one) => one !== '').join(' ')} ${sign}`
}
