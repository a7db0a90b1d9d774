import type { InstrumentKind, InstrumentUnit } from './instrument.ts'

const lengths = ['um', 'mm', 'in'] as const
const pressures = ['kPa', 'bar', 'psi'] as const

/** What the numbers of each kind can be in; of a flat, its departure from flat. */
export const unitsOfKind: Readonly<Record<InstrumentKind, readonly InstrumentUnit[]>> = {
  lamp: [],
  'optical-flat': ['um'],
  'dial-indicator': lengths,
  'lever-indicator': lengths,
  micrometer: lengths,
  profilometer: ['um'],
  'pressure-gauge': pressures,
  'pressure-transducer': pressures,
  thermometer: ['C'],
  'flow-meter': ['mL-per-min'],
  balance: ['g'],
  volume: ['L'],
  'test-rig': [...pressures, 'per-min', 'C', 'mL-per-min'],
}
