import type { CountedResult } from '../src/domain/counted-results.ts'
import { cycleBefore } from '../src/domain/cycle-before.ts'
import type { Evidence } from '../src/domain/evidence.ts'
import { faceStateByLog } from '../src/domain/face-state-by-log.ts'
import { figure } from '../src/domain/figure.ts'
import type { FlatnessReading } from '../src/domain/flatness.ts'
import { mattedAfter } from '../src/domain/matted-after.ts'
import type { MeasuredValue } from '../src/domain/measured-value.ts'
import type { ResultSubject } from '../src/domain/result-subject.ts'
import type { StaticTest } from '../src/domain/static-test.ts'
import { numberText } from './figures/number-text.ts'
import { minuteText } from './figures/time-text.ts'
import { finishDetails } from './finish-details.ts'
import { inspectionWords } from './words/en/inspection.ts'
import { lappingWords } from './words/en/lapping.ts'
import { tradeWord, tradeWords } from './words/en/trade.ts'

const w = inspectionWords

/** How a result was measured, in one line. */
export function recordDetail(
  evidence: Evidence,
  { subjectKind, subjectId }: Pick<CountedResult, keyof ResultSubject>,
): string {
  const isIt = (one: { readonly id: number }) => one.id === subjectId
  if (subjectKind === 'flatness-reading') {
    const reading = evidence.flatnessReadings.find(isIt)
    if (reading === undefined) return ''
    const of = { readings: evidence.flatnessReadings, cycles: evidence.lapCycles }
    const detail = withCycle(readingDetail(reading), reading, of.readings, evidence)
    return [detail, ...mattedText(mattedAfter(reading, of))].join('; ')
  }
  if (subjectKind === 'static-test') {
    const test = evidence.staticTests.find(isIt)
    return test === undefined ? '' : testDetail(test)
  }
  const value = evidence.measuredValues.find(isIt)
  if (value === undefined) return ''
  const of = { readings: evidence.measuredValues, cycles: evidence.lapCycles }
  const detail = [valueDetail(value), ...finishDetails(value, faceStateByLog(value, of))].join('; ')
  return withCycle(detail, value, evidence.measuredValues, evidence)
}

/** The lap cycle after which it was read, where there was one. */
function withCycle<T extends Parameters<typeof cycleBefore>[0]>(
  detail: string,
  reading: T,
  readings: readonly T[],
  { lapCycles }: Evidence,
): string {
  const before = cycleBefore(reading, { readings, cycles: lapCycles })
  return before === null ? detail : `${detail}; ${lappingWords.afterCycle(before.number)}`
}

function mattedText(at: string | null): readonly string[] {
  return at === null ? [] : [lappingWords.finish.mattedAfter(minuteText(at))]
}

function readingDetail(reading: FlatnessReading): string {
  const { directions, viewingAngleDeg, soakMin, temperatureC, unreadableCause: cause } = reading
  const counts = directions.map((one) => w.direction(one.bandsTyped, one.directionDeg)).join(', ')
  return [
    tradeWord(tradeWords.pattern, reading.pattern),
    ...(cause === null ? [] : [tradeWords.unreadableCause[cause].toLowerCase()]),
    ...(counts === '' ? [] : [w.bands(counts, directions.length > 1)]),
    ...(reading.ringCentre === null ? [] : [tradeWords.ringCentre[reading.ringCentre]]),
    // Of a photograph it follows from the shape of the edge.
    w.angle(
      reading.wholeFace === null
        ? numberText(viewingAngleDeg)
        : figure(viewingAngleDeg, { decimals: 1 }).text,
    ),
    ...(soakMin === null ? [] : [w.soak(numberText(soakMin))]),
    ...(temperatureC === null ? [] : [w.temperature(numberText(temperatureC))]),
  ].join('; ')
}

function testDetail(test: StaticTest): string {
  const { volumeL, durationS, startTemperatureC, endTemperatureC } = test
  const temperatures = [startTemperatureC, endTemperatureC].map(numberText)
  const [from = '', to = ''] = temperatures
  return [
    w.pressures(kPaText(test.startPressureKPaAbs), kPaText(test.endPressureKPaAbs)),
    w.conditions(numberText(volumeL), numberText(durationS), from, to),
  ].join('; ')
}

function kPaText(kPa: number): string {
  return figure(kPa, { decimals: 3 }).text
}

function valueDetail({ readings, unit }: MeasuredValue): string {
  const typed = readings.map((one) => one.typed).join(', ')
  return w.readings(typed, tradeWord(tradeWords.unit, unit))
}
