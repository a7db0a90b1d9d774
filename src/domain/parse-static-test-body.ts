import { confirmField, isConfirmed } from './confirmed.ts'
import { expandedVolumeL } from './expanded-volume-l.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { leakLimitTemperatureC } from './judge-static-test.ts'
import { correctionFields } from './parse-correction.ts'
import { parseStaticTestBudgetBody } from './parse-static-test-budget.ts'
import {
  parseGasTemperature,
  parseStartedAt,
  parseStaticTestCommon,
  standardBarometerKPa,
} from './parse-static-test-common.ts'
import type { Parsed } from './parsed.ts'
import { refuseVolumeInstrument } from './refuse-volume-instrument.ts'
import { leakPlaces, type NewStaticTest, staticTestBounds, testSections } from './static-test.ts'
import type { StaticTestContext } from './static-test-context.ts'
import { tradeWindow } from './trade-window.ts'

export const staticTestBodyFields = [
  'section',
  'volumeL',
  'referenceTemperatureC',
  'start',
  'end',
  'startedAt',
  'stabilisationS',
  'expansion',
  'leakPlace',
  'gaugeInstrumentId',
  'thermometerInstrumentId',
  'volumeInstrumentId',
  'uncertainties',
  'note',
  ...correctionFields,
  confirmField,
] as const

type End = {
  readonly timeS: number
  readonly pressureKPaAbs: number
  readonly temperatureC: number
  readonly pressureTyped: string
}

/**
 * Reads a static test as a rig sends it: absolute pressures at two times of its own clock. Where
 * it does not say when the hold began, the hold is taken to have ended as it was sent.
 */
export function parseStaticTestBody(
  input: Input,
  context: StaticTestContext,
): Parsed<Omit<NewStaticTest, 'workOrderId'>> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...staticTestBodyFields)
  const section = fields.optionalChoice('section', testSections) ?? 'whole'
  const start = parseEnd(fields.group('start'))
  const endFields = fields.group('end')
  const end = parseEnd(endFields)
  const durationS = parseDuration(fields, endFields, start, end)
  // A clock that does not say its zone is nobody's guess: only a person's form is taken as UTC.
  if (/T[\d:.]+$/.test(fields.typed('startedAt').trim())) fields.fault('startedAt', 'no-offset')
  const startedAt = parseStartedAt(fields, context, durationS)
  const { temperatureC, stabilisationS } = staticTestBounds
  const shown = {
    typed: {
      startPressure: start.pressureTyped,
      endPressure: end.pressureTyped,
      pressureUnit: 'kPa',
      pressureReference: 'absolute',
      barometer: '',
    },
    startPressureKPaAbs: start.pressureKPaAbs,
    endPressureKPaAbs: end.pressureKPaAbs,
    // Absolute pressures need no barometer; the standard one stands in for the record.
    barometerKPa: standardBarometerKPa,
    startTemperatureC: start.temperatureC,
    endTemperatureC: end.temperatureC,
  } as const
  const volume = bodyVolume(fields, input)
  refuseVolumeInstrument(fields, volume.expansion)
  const isShown = fields.faults.length === 0
  return fields.finish({
    section,
    ...shown,
    referenceTemperatureC:
      fields.optionalDecimal('referenceTemperatureC', temperatureC) ?? leakLimitTemperatureC,
    durationS,
    startedAt,
    ...volume,
    stabilisationS: fields.optionalDecimal('stabilisationS', stabilisationS),
    leakPlace: fields.optionalChoice('leakPlace', leakPlaces),
    budgetInput: parseStaticTestBudgetBody(fields, input),
    ...parseStaticTestCommon(fields, context, startedAt, isShown ? shown : null),
  })
}

/** The trade's window is a gauge's; absolute pressures are held against it at standard air. */
const usualKPaAbs = { min: 0, max: tradeWindow.sealedPressureKPa.max + standardBarometerKPa }

function parseEnd(fields: Fields): End {
  fields.only('timeS', 'pressureKPaAbs', 'temperatureC')
  return {
    timeS: fields.decimal('timeS', { min: -1e9, max: 1e12 }),
    pressureKPaAbs: fields.windowed('pressureKPaAbs', usualKPaAbs, staticTestBounds.pressureKPaAbs),
    temperatureC: parseGasTemperature(fields, 'temperatureC'),
    pressureTyped: fields.typed('pressureKPaAbs').trim(),
  }
}

function parseDuration(fields: Fields, endFields: Fields, start: End, end: End): number {
  const isTimeFaulty = fields.faults.some(({ field }) => /^(start|end)(\.timeS)?$/.test(field))
  if (isTimeFaulty) return 0
  const durationS = end.timeS - start.timeS
  const { min, max } = staticTestBounds.durationS
  const bounds = { min: start.timeS + min, max: start.timeS + max }
  if (durationS <= 0) endFields.fault('timeS', 'not-later')
  else if (durationS < min) endFields.fault('timeS', 'below', bounds)
  else if (durationS > max) endFields.fault('timeS', 'above', bounds)
  return durationS
}

/** Stated, or by expansion from a known volume, as absolute pressures. */
function bodyVolume(fields: Fields, input: Input): Pick<NewStaticTest, 'volumeL' | 'expansion'> {
  const { volumeL, pressureKPaAbs } = staticTestBounds
  if (input.expansion === undefined || input.expansion === null) {
    return { volumeL: fields.decimal('volumeL', volumeL), expansion: null }
  }
  if (fields.isGiven('volumeL')) fields.fault('volumeL', 'by-expansion')
  const part = fields.group('expansion')
  part.only('knownVolumeL', 'filledKPaAbs', 'beforeKPaAbs', 'joinedKPaAbs')
  const before = fields.faults.length
  const expansion = {
    knownVolumeL: part.decimal('knownVolumeL', volumeL),
    filledKPaAbs: part.decimal('filledKPaAbs', pressureKPaAbs),
    beforeKPaAbs: part.decimal('beforeKPaAbs', pressureKPaAbs),
    joinedKPaAbs: part.decimal('joinedKPaAbs', pressureKPaAbs),
  }
  const isRead = fields.faults.length === before
  return { volumeL: isRead ? expandedVolumeL(part, expansion, 'joinedKPaAbs') : 0, expansion }
}
