import { bandsToHeightUm } from '../science/optics/bands-to-height-um.ts'
import { heightToBands } from '../science/optics/height-to-bands.ts'
import { type LampId, lamps } from '../science/optics/lamps.ts'
import { exactFactors } from '../science/units/exact-factors.ts'
import { kPaToPressure } from '../science/units/kpa-to-pressure.ts'
import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import type { PressureUnit } from '../science/units/pressure-unit.ts'
import { throughputUnits } from '../science/units/throughput-units.ts'
import { uinToUm } from '../science/units/uin-to-um.ts'
import { umToUin } from '../science/units/um-to-uin.ts'
import { leakLimitTemperatureC } from './judge-static-test.ts'

/** The units in which limits are written. */
export const limitUnits = [
  'um',
  'mm',
  'uin',
  'in',
  'helium-bands',
  'sodium-bands',
  'mercury-green-bands',
  'helium-neon-red-bands',
  'um-tir',
  'mm-tir',
  'in-tir',
  'um-per-mm',
  'mm-per-mm',
  'in-per-in',
  'helium-bands-per-mm',
  'kPa',
  'bar',
  'psi',
  'mbar',
  'pa-m3-per-s',
  'ml-per-min',
  'mbar-l-per-s',
  'sccm-0c',
  'g-per-h',
  'oz-per-h',
  'g-per-day',
  'ml-per-h',
  'liquid-ml-per-min',
  'ml-per-m3',
  'ppm-by-volume',
] as const
export type LimitUnit = (typeof limitUnits)[number]

/** Units of a limit that is multiplied by a size. */
export const perMmUnits = [
  'um-per-mm',
  'mm-per-mm',
  'in-per-in',
  'helium-bands-per-mm',
] as const satisfies readonly LimitUnit[]

export function isPerMmUnit(unit: LimitUnit): boolean {
  return perMmUnits.some((one) => one === unit)
}

/** From and to the unit in which the characteristic is stored (per millimetre: µm per mm). */
export type LimitUnitMeaning = {
  readonly toStored: (value: number) => number
  readonly fromStored: (stored: number) => number
}

const as = times(1)
const inchUm = exactFactors.inch.value * 1e6
/** The avoirdupois ounce, a sixteenth of the pound: 28.349523125 g exactly. */
const ounceG = (exactFactors.pound.value * 1000) / 16
const oneThroughput = throughputUnits({
  leakPaM3PerS: 1,
  referenceTemperatureC: leakLimitTemperatureC,
})

/** What a value in each unit means; exact factors only, and of bands the wavelength of the lamp. */
export const limitUnitMeaning: Readonly<Record<LimitUnit, LimitUnitMeaning>> = {
  um: as,
  mm: times(1000),
  uin: { toStored: uinToUm, fromStored: umToUin },
  in: times(inchUm),
  'helium-bands': bandsOf('helium'),
  'sodium-bands': bandsOf('sodium'),
  'mercury-green-bands': bandsOf('mercury-green'),
  'helium-neon-red-bands': bandsOf('helium-neon-red'),
  'um-tir': as,
  'mm-tir': times(1000),
  'in-tir': times(inchUm),
  'um-per-mm': as,
  'mm-per-mm': times(1000),
  'in-per-in': times(1000),
  'helium-bands-per-mm': bandsOf('helium'),
  kPa: as,
  bar: pressureOf('bar'),
  psi: pressureOf('psi'),
  mbar: pressureOf('mbar'),
  'pa-m3-per-s': as,
  'ml-per-min': per(oneThroughput.leakMlPerMin),
  'mbar-l-per-s': per(oneThroughput.leakMbarLPerS),
  'sccm-0c': per(oneThroughput.leakSccm0C),
  'g-per-h': as,
  'oz-per-h': times(ounceG),
  'g-per-day': per(24),
  'ml-per-h': as,
  'liquid-ml-per-min': times(60),
  'ml-per-m3': as,
  'ppm-by-volume': as,
}

function times(storedPerUnit: number): LimitUnitMeaning {
  return {
    toStored: (value) => value * storedPerUnit,
    fromStored: (stored) => stored / storedPerUnit,
  }
}

function per(unitsPerStored: number): LimitUnitMeaning {
  return {
    toStored: (value) => value / unitsPerStored,
    fromStored: (stored) => stored * unitsPerStored,
  }
}

function bandsOf(lamp: LampId): LimitUnitMeaning {
  const { wavelengthNm } = lamps[lamp]
  return {
    toStored: (bands) => bandsToHeightUm({ bands, wavelengthNm }),
    fromStored: (heightUm) => heightToBands({ heightUm, wavelengthNm }),
  }
}

function pressureOf(unit: PressureUnit): LimitUnitMeaning {
  return {
    toStored: (value) => pressureToKPa(value, unit),
    fromStored: (kPa) => kPaToPressure(kPa, unit),
  }
}
