import { bandsToHeightUm } from '../science/optics/bands-to-height-um.ts'
import { lamps } from '../science/optics/lamps.ts'
import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import { throughputUnits } from '../science/units/throughput-units.ts'
import { uinToUm } from '../science/units/uin-to-um.ts'
import type { Characteristic } from './characteristic.ts'
import type { Bounds } from './fields.ts'
import { leakLimitTemperatureC } from './judge-static-test.ts'

/** The units in which limits are written; the first of each characteristic is the stored one. */
export const limitUnits = [
  'um',
  'uin',
  'helium-bands',
  'kPa',
  'bar',
  'psi',
  'pa-m3-per-s',
  'ml-per-min',
  'mbar-l-per-s',
] as const
export type LimitUnit = (typeof limitUnits)[number]

/** The units in which the start of a drop is written, gauge; the first is the stored one. */
export const startUnits = ['kPa', 'bar', 'psi'] as const satisfies readonly LimitUnit[]
export type StartUnit = (typeof startUnits)[number]

/** What can be meant; the window catches slips of the unit, such as 1.7 written for bar as kPa. */
export const startBounds: Readonly<Record<StartUnit, Bounds>> = {
  kPa: { min: 5, max: 10_000 },
  bar: { min: 0.05, max: 100 },
  psi: { min: 0.75, max: 1450 },
}

type LimitUnitMeaning = {
  readonly characteristic: Characteristic
  /** What can be meant; the window catches slips of the unit, a limit of zero passes nothing. */
  readonly bounds: Bounds
  readonly toStored: (value: number) => number
}

const oneThroughput = throughputUnits({
  leakPaM3PerS: 1,
  referenceTemperatureC: leakLimitTemperatureC,
})
const { wavelengthNm } = lamps.helium

/** What a value in each unit means in the unit of its characteristic; exact factors only. */
export const limitUnitMeaning: Readonly<Record<LimitUnit, LimitUnitMeaning>> = {
  um: of('flatness', { min: 0.01, max: 100 }, (value) => value),
  uin: of('flatness', { min: 0.5, max: 4000 }, uinToUm),
  'helium-bands': of('flatness', { min: 0.05, max: 300 }, (bands) =>
    bandsToHeightUm({ bands, wavelengthNm }),
  ),
  kPa: of('static-drop', { min: 0.001, max: 1000 }, (value) => value),
  bar: of('static-drop', { min: 0.00001, max: 10 }, (value) => pressureToKPa(value, 'bar')),
  psi: of('static-drop', { min: 0.0001, max: 150 }, (value) => pressureToKPa(value, 'psi')),
  'pa-m3-per-s': of('static-leak-rate', { min: 0.000001, max: 100 }, (value) => value),
  'ml-per-min': of(
    'static-leak-rate',
    { min: 0.0001, max: 60_000 },
    (value) => value / oneThroughput.leakMlPerMin,
  ),
  'mbar-l-per-s': of(
    'static-leak-rate',
    { min: 0.00001, max: 1000 },
    (value) => value / oneThroughput.leakMbarLPerS,
  ),
}

function of(
  characteristic: Characteristic,
  bounds: Bounds,
  toStored: (value: number) => number,
): LimitUnitMeaning {
  return { characteristic, bounds, toStored }
}
