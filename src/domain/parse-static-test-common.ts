import { checkRange } from './check-range.ts'
import type { Fields } from './fields.ts'
import { gaugeReadings } from './gauge-readings.ts'
import { parseCorrection } from './parse-correction.ts'
import { parseDecimal } from './parse-decimal.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { parseInstrumentId } from './parse-instrument-id.ts'
import { type NewStaticTest, staticTestBounds } from './static-test.ts'
import type { StaticTestContext } from './static-test-context.ts'
import { thermometerReadings } from './thermometer-readings.ts'
import { tradeWindow } from './trade-window.ts'

/** Standard atmosphere, exact: what the barometer is taken as where none was read. */
export const standardBarometerKPa = 101.325

const absoluteZeroC = -273.15

type Common = Pick<
  NewStaticTest,
  | 'gaugeInstrumentId'
  | 'thermometerInstrumentId'
  | 'volumeInstrumentId'
  | 'note'
  | 'replacesId'
  | 'reason'
>

/** What the instruments showed; null where that could not be read. */
type Shown = Parameters<typeof gaugeReadings>[0] & Parameters<typeof thermometerReadings>[0]

/** What the form and the machine interface ask alike. `startedAt` names the day of use. */
export function parseStaticTestCommon(
  fields: Fields,
  context: StaticTestContext,
  startedAt: string,
  shown: Shown | null,
): Common {
  const { instruments, exceptions } = context
  // A day that is refused itself says nothing about the instruments.
  const isDay = fields.faults.every((one) => one.field !== 'startedAt')
  const recordedOn = context.now.slice(0, 10)
  const day = isDay ? startedAt.slice(0, 10) : recordedOn
  const asked = { instruments, exceptions, day, recordedOn }
  const kind = gaugeKindOf(fields, context)
  const gauge = parseInstrumentId(fields, 'gaugeInstrumentId', { kind, ...asked })
  const thermometer = fields.isGiven('thermometerInstrumentId')
    ? parseInstrumentId(fields, 'thermometerInstrumentId', { kind: 'thermometer', ...asked })
    : undefined
  const volume = fields.isGiven('volumeInstrumentId')
    ? parseInstrumentId(fields, 'volumeInstrumentId', { kind: 'volume', ...asked })
    : undefined
  if (shown !== null) {
    const gaugeUse = { instrument: gauge, readings: gaugeReadings(shown), ...asked }
    checkRange(fields, 'gaugeInstrumentId', gaugeUse)
    const use = { instrument: thermometer, readings: thermometerReadings(shown), ...asked }
    checkRange(fields, 'thermometerInstrumentId', use)
  }
  return {
    gaugeInstrumentId: gauge?.id ?? 0,
    thermometerInstrumentId: thermometer?.id ?? null,
    volumeInstrumentId: volume?.id ?? null,
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  }
}

/** A transducer serves as a gauge. */
function gaugeKindOf(fields: Fields, { instruments }: StaticTestContext) {
  const id = fields.typed('gaugeInstrumentId').trim()
  const named = instruments.find((one) => String(one.id) === id)
  return named?.kind === 'pressure-transducer' ? named.kind : 'pressure-gauge'
}

/** A temperature of the gas in the test; the impossible is told apart from the unusual. */
export function parseGasTemperature(fields: Fields, name: string): number {
  const temperatureC = parseDecimal(fields.typed(name))
  if (temperatureC !== undefined && temperatureC < absoluteZeroC) {
    fields.fault(name, 'below-absolute-zero')
    return temperatureC
  }
  return fields.windowed(name, tradeWindow.temperatureC, staticTestBounds.temperatureC)
}

/**
 * When the hold began: not before the day on which the seal came in (an older date would also
 * borrow an older calibration), and so long before the instant of recording that it is over. Where
 * nobody says, it ended as it was recorded, which is how a test is mostly written down.
 */
export function parseStartedAt(
  fields: Fields,
  context: StaticTestContext,
  durationS: number,
): string {
  if (!fields.isGiven('startedAt')) {
    return new Date(Date.parse(context.now) - durationS * 1000).toISOString()
  }
  const before = fields.faults.length
  const startedAt = fields.instant('startedAt')
  if (fields.faults.length > before) return startedAt
  const endedMs = Date.parse(startedAt) + durationS * 1000
  const bounds = { min: context.receivedAt.slice(0, 10), max: context.now }
  if (endedMs > Date.parse(context.now)) fields.fault('startedAt', 'above', bounds)
  else if (startedAt.slice(0, 10) < bounds.min) fields.fault('startedAt', 'below', bounds)
  return startedAt
}
