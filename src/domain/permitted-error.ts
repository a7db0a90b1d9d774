import type { Instrument } from './instrument.ts'
import { basePerInstrumentUnit } from './instrument-unit.ts'

/**
 * The largest error that an instrument may have, to either side, in the unit of its calibration:
 * of an optical flat its largest departure from flat. Null where that is not known.
 */
export function permittedError(
  instrument: Pick<Instrument, 'kind' | 'unit' | 'largestError' | 'flatToleranceUm'>,
): number | null {
  const { kind, unit, largestError, flatToleranceUm } = instrument
  if (kind !== 'optical-flat') return largestError
  const factor = unit === '' ? 1 : basePerInstrumentUnit(instrument, 'um')
  return flatToleranceUm === null || factor === null ? null : flatToleranceUm / factor
}
