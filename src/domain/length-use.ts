import { combinedStandardUncertainty } from '../science/uncertainty/combined-standard-uncertainty.ts'
import { normalLine } from '../science/uncertainty/normal-line.ts'
import { rectangularLine } from '../science/uncertainty/rectangular-line.ts'
import { resolutionLine } from '../science/uncertainty/resolution-line.ts'
import type { InstrumentUse } from './instrument.ts'
import { measuredAccuracy } from './measured-accuracy.ts'
import type { StripContext } from './strip-context.ts'
import { useOf } from './use-of.ts'
import { valueReadings } from './value-readings.ts'
import type { TypedMm } from './wear-track.ts'

/** The instrument that lengths were read with, and how well it tells one; null: none was named. */
export type LengthUse = {
  readonly use: InstrumentUse
  /** Null where its papers say nothing of how far off it may be. */
  readonly standardUncertaintyUm: number | null
}

/**
 * What stood on the label of the instrument that lengths were read with, and the standard
 * uncertainty of one length by it: its calibration, its error (rectangular) and its step.
 * @throws RangeError where the lengths were not parsed in this context
 */
export function lengthUse(
  instrumentId: number | null,
  lengths: readonly TypedMm[],
  { instruments, exceptions, today: day }: StripContext,
): LengthUse | null {
  if (instrumentId === null) return null
  const instrument = instruments.find((one) => one.id === instrumentId)
  if (instrument === undefined) {
    throw new RangeError(`lengthUse requires an instrument of its context, got id ${instrumentId}`)
  }
  const read = lengths.map(({ mm, typed }) => ({ um: mm * 1000, typed }))
  const readings = valueReadings(read)
  const known = measuredAccuracy(instrument, day, { unit: 'mm', readings: read })
  const { standardUncertaintyUm: u, largestErrorUm: error, resolutionUm } = known
  const lines = [
    ...(u === null ? [] : [normalLine({ source: 'instrument', value: u, sensitivity: 1 })]),
    ...(error === null
      ? []
      : [rectangularLine({ source: 'error', halfWidth: error, sensitivity: 1 })]),
    resolutionLine({ source: 'resolution', step: resolutionUm, sensitivity: 1 }),
  ]
  return {
    use: useOf(instrument, { day, recordedOn: day, exceptions, readings }),
    standardUncertaintyUm: u === null && error === null ? null : combinedStandardUncertainty(lines),
  }
}
