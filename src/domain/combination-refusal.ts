import { combineWholeFaces } from './combine-whole-faces.ts'
import { combinedParts } from './combined-parts.ts'
import { compareWholeFaces } from './compare-whole-faces.ts'
import { cycleBefore } from './cycle-before.ts'
import type { Evidence } from './evidence.ts'
import type { FlatnessReading } from './flatness.ts'
import type { InstrumentUse } from './instrument.ts'
import { placedCycles } from './placed-cycles.ts'

export const combinationRefusals = [
  'one-reading',
  'other-face',
  'other-condition',
  'replaced',
  'no-surface',
  'same-photo',
  'other-lap',
  'lapped-since',
  'other-instrument',
  'other-calibration',
  'in-doubt',
  'other-land',
  'unlike',
  'disagree',
  'combined-already',
] as const
export type CombinationRefusal = (typeof combinationRefusals)[number]

export type CombinationRecords = Pick<Evidence, 'flatnessReadings' | 'lapCycles' | 'doubts'>

/**
 * Why some readings of an order are not combined; null where they are. Only what was read of one
 * state of one face under one lamp and flat has a mean; and since a combination is recorded now, it
 * must be true of the face as it is now.
 * @param asked two or more, of the order
 */
export function combinationRefusal(
  asked: readonly FlatnessReading[],
  records: CombinationRecords,
): CombinationRefusal | null {
  const parts = combinedParts(asked, records.flatnessReadings)
  const [first] = parts
  if (first === undefined || parts.length < 2) return 'one-reading'
  const isEven = <T>(of: (one: FlatnessReading) => T) => new Set(parts.map(of)).size === 1
  if (!isEven((one) => one.componentId)) return 'other-face'
  if (!isEven((one) => one.condition)) return 'other-condition'
  if (parts.some((one) => one.replacedById !== null)) return 'replaced'
  if (parts.some((one) => (one.wholeFace?.surface ?? null) === null)) return 'no-surface'
  if (new Set(parts.map(photoOf)).size < parts.length) return 'same-photo'
  const { flatnessReadings: readings, lapCycles: cycles } = records
  const lapOf = (one: FlatnessReading) => cycleBefore(one, { readings, cycles })?.cycle.id ?? null
  if (!isEven(lapOf)) return 'other-lap'
  const last = placedCycles(cycles, first.componentId).at(-1)?.cycle.id ?? null
  if (first.condition === 'as-left' && lapOf(first) !== last) return 'lapped-since'
  if (!isEven((one) => `${one.lampInstrumentId} ${one.flatInstrumentId}`)) return 'other-instrument'
  if (!isEven((one) => useText(one.lamp) + useText(one.flat))) return 'other-calibration'
  if (parts.some((one) => isInDoubt(one, records))) return 'in-doubt'
  const ratios = parts.map((one) => one.wholeFace?.surface?.radiusRatio ?? 0)
  if (Math.max(...ratios) - Math.min(...ratios) > mostRatioApart) return 'other-land'
  if (combineWholeFaces(parts).turns.some((one) => one?.standing === 'unlike')) return 'unlike'
  if (parts.some((one) => doNotAgree(one, first))) return 'disagree'
  return isCombinedAlready(parts, readings) ? 'combined-already' : null
}

/** A mean of figures that contradict each other would be of none of them. */
function doNotAgree(one: FlatnessReading, first: FlatnessReading): boolean {
  if (one.wholeFace === null || first.wholeFace === null || one === first) return false
  const { agreement } = compareWholeFaces(
    { ...first, wholeFace: first.wholeFace },
    { ...one, wholeFace: one.wholeFace },
    { isTurned: true },
  )
  return agreement !== null && !agreement.isWithin
}

/** As combineSurfaces takes them. */
const mostRatioApart = 0.02

function photoOf({ wholeFace }: FlatnessReading): number | null {
  const source = wholeFace?.source
  return source !== undefined && 'photoId' in source ? source.photoId : null
}

/** How an instrument stood on the day: the new record says it once for all parts. */
function useText({ instrumentId, status, certificateNumber, dueOn, exception }: InstrumentUse) {
  return JSON.stringify([instrumentId, status, certificateNumber, dueOn, exception?.id ?? null])
}

function isInDoubt({ id }: FlatnessReading, { doubts }: CombinationRecords): boolean {
  return doubts.some(
    ({ subjectKind, subjectId, answer }) =>
      subjectKind === 'flatness-reading' && subjectId === id && answer !== 'stands',
  )
}

function isCombinedAlready(
  parts: readonly FlatnessReading[],
  readings: readonly FlatnessReading[],
): boolean {
  const idsOf = (of: readonly FlatnessReading[]) => of.map((one) => one.id).join(' ')
  return readings.some(
    (one) =>
      one.replacedById === null &&
      one.wholeFace?.source.kind === 'combined' &&
      idsOf(combinedParts([one], readings)) === idsOf(parts),
  )
}
