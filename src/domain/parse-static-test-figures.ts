import { roundForPrint } from '../science/rounding/round-for-print.ts'
import type { Fields } from './fields.ts'
import { leakLimitTemperatureC } from './judge-static-test.ts'
import { parseGaugePressure } from './parse-gauge-pressure.ts'
import { type GaugeScale, parseGaugeScale } from './parse-gauge-scale.ts'
import { parseGasTemperature } from './parse-static-test-common.ts'
import { parseTestVolume } from './parse-test-volume.ts'
import { type NewStaticTest, staticTestBounds } from './static-test.ts'

/** What a static test's figures depend on, and the pressures as they were typed. */
export type ParsedStaticTestFigures = Pressures &
  Pick<
    NewStaticTest,
    | 'startTemperatureC'
    | 'endTemperatureC'
    | 'referenceTemperatureC'
    | 'durationS'
    | 'volumeL'
    | 'expansion'
  >

/**
 * Reads the part of a static test's form that its figures depend on, so that an answer can be
 * shown while the rest is not entered yet. Faults are collected in `fields`.
 */
export function parseStaticTestFigures(fields: Fields): ParsedStaticTestFigures {
  const scale = parseGaugeScale(fields)
  return {
    ...parsePressures(fields, scale),
    startTemperatureC: parseGasTemperature(fields, 'startTemperatureC'),
    endTemperatureC: parseGasTemperature(fields, 'endTemperatureC'),
    referenceTemperatureC: leakLimitTemperatureC,
    durationS: parseDuration(fields),
    ...parseTestVolume(fields, scale.scale),
  }
}

type Pressures = Pick<
  NewStaticTest,
  'typed' | 'startPressureKPaAbs' | 'endPressureKPaAbs' | 'barometerKPa'
>

function parsePressures(fields: Fields, { scale, asTyped }: GaugeScale): Pressures {
  return {
    typed: {
      startPressure: fields.typed('startPressure').trim(),
      endPressure: fields.typed('endPressure').trim(),
      pressureUnit: asTyped.unit,
      pressureReference: asTyped.reference,
      barometer: fields.typed('barometerKPa').trim(),
    },
    startPressureKPaAbs: parseGaugePressure(fields, 'startPressure', scale),
    endPressureKPaAbs: parseGaugePressure(fields, 'endPressure', scale),
    barometerKPa: asTyped.barometerKPa,
  }
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
