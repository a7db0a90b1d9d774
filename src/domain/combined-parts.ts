import type { FlatnessReading } from './flatness.ts'

/**
 * The readings that a combination of some others rests on, oldest first: a combined one stands for
 * its own parts, so that nothing counts twice.
 * @param asked of one order, all of them among `readings`
 */
export function combinedParts(
  asked: readonly FlatnessReading[],
  readings: readonly FlatnessReading[],
): readonly FlatnessReading[] {
  const ids = new Set(asked.flatMap(partIds))
  return readings.filter((one) => ids.has(one.id))
}

function partIds({ id, wholeFace }: FlatnessReading): readonly number[] {
  const source = wholeFace?.source
  return source?.kind === 'combined' ? source.parts.map((one) => one.readingId) : [id]
}
