import { roundForPrint } from '../science/rounding/round-for-print.ts'
import { gaugeToAbsoluteKPa } from '../science/units/gauge-to-absolute-kpa.ts'
import { kPaToPressure } from '../science/units/kpa-to-pressure.ts'
import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import type { Bounds, Fields } from './fields.ts'
import { leakLimitTemperatureC } from './judge-static-test.ts'
import { parseGasTemperature, standardBarometerKPa } from './parse-static-test-common.ts'
import {
  type NewStaticTest,
  type PressureReference,
  type PressureUnit,
  pressureReferences,
  pressureUnits,
  staticTestBounds,
} from './static-test.ts'
import { tradeWindow } from './trade-window.ts'

/** What a static test's figures depend on, and the pressures as they were typed. */
export type ParsedStaticTestFigures = Pressures &
  Pick<
    NewStaticTest,
    'startTemperatureC' | 'endTemperatureC' | 'referenceTemperatureC' | 'durationS' | 'volumeL'
  >

/**
 * Reads the part of a static test's form that its figures depend on, so that an answer can be
 * shown while the rest is not entered yet. Faults are collected in `fields`.
 */
export function parseStaticTestFigures(fields: Fields): ParsedStaticTestFigures {
  return {
    ...parsePressures(fields),
    startTemperatureC: parseGasTemperature(fields, 'startTemperatureC'),
    endTemperatureC: parseGasTemperature(fields, 'endTemperatureC'),
    referenceTemperatureC: leakLimitTemperatureC,
    durationS: parseDuration(fields),
    volumeL: fields.decimal('volumeL', staticTestBounds.volumeL),
  }
}

type Pressures = Pick<
  NewStaticTest,
  'typed' | 'startPressureKPaAbs' | 'endPressureKPaAbs' | 'barometerKPa'
>

type Scale = {
  readonly unit: PressureUnit
  readonly reference: PressureReference
  readonly barometerKPa: number
}

function parsePressures(fields: Fields): Pressures {
  const before = fields.faults.length
  const unit = fields.choice('pressureUnit', pressureUnits)
  const reference = fields.choice('pressureReference', pressureReferences)
  const barometerKPa =
    fields.optionalDecimal('barometerKPa', staticTestBounds.barometerKPa) ?? standardBarometerKPa
  const scale = fields.faults.length > before ? null : { unit, reference, barometerKPa }
  return {
    typed: {
      startPressure: fields.typed('startPressure').trim(),
      endPressure: fields.typed('endPressure').trim(),
      pressureUnit: unit,
      pressureReference: reference,
      barometer: fields.typed('barometerKPa').trim(),
    },
    startPressureKPaAbs: parsePressure(fields, 'startPressure', scale),
    endPressureKPaAbs: parsePressure(fields, 'endPressure', scale),
    barometerKPa,
  }
}

/** Without a scale (its fields were faulty) only the number itself is looked at. */
function parsePressure(fields: Fields, name: string, scale: Scale | null): number {
  const before = fields.faults.length
  const value =
    scale === null
      ? fields.decimal(name, { min: -1e9, max: 1e9 })
      : fields.windowed(
          name,
          typedBounds(scale, usualKPaAbs(scale)),
          typedBounds(scale, possibleKPaAbs),
        )
  if (scale === null || fields.faults.length > before) return 0
  const { unit, reference, barometerKPa } = scale
  const pressureKPa = pressureToKPa(value, unit)
  if (reference === 'absolute') return pressureKPa
  // A full vacuum typed with the rounding of its unit must not come out below nothing.
  return gaugeToAbsoluteKPa({ gaugeKPa: Math.max(pressureKPa, -barometerKPa), barometerKPa })
}

const possibleKPaAbs = staticTestBounds.pressureKPaAbs

/** From a full vacuum to the highest sealed pressure of the trade's window, which is a gauge's. */
function usualKPaAbs({ barometerKPa }: Scale): Bounds {
  return { min: 0, max: tradeWindow.sealedPressureKPa.max + barometerKPa }
}

/** Absolute pressures, told in the unit and reference of the field. */
function typedBounds({ unit, reference, barometerKPa }: Scale, { min, max }: Bounds): Bounds {
  const offsetKPa = reference === 'gauge' ? barometerKPa : 0
  const inUnit = (kPa: number) =>
    roundForPrint({ value: kPaToPressure(kPa - offsetKPa, unit), decimals: 4 })
  return { min: inUnit(min), max: inUnit(max) }
}

/** Minutes and seconds, or either alone. */
function parseDuration(fields: Fields): number {
  const before = fields.faults.length
  const { min, max } = staticTestBounds.durationS
  const minutes = fields.optionalDecimal('durationMin', { min: 0, max: max / 60 })
  const seconds = fields.optionalDecimal('durationS', { min: 0, max })
  const name =
    fields.isGiven('durationMin') && !fields.isGiven('durationS') ? 'durationMin' : 'durationS'
  if (fields.faults.length > before) return 0
  if (minutes === null && seconds === null) {
    fields.fault(name, 'empty')
    return 0
  }
  const durationS = (minutes ?? 0) * 60 + (seconds ?? 0)
  // Told in seconds whichever field it stands at would mislead: minutes are told as minutes.
  const scale = name === 'durationMin' ? 60 : 1
  const told = { min: roundForPrint({ value: min / scale, decimals: 2 }), max: max / scale }
  if (durationS < min) fields.fault(name, 'below', told)
  else if (durationS > max) fields.fault(name, 'above', told)
  return durationS
}
