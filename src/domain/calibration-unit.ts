import type { Instrument, InstrumentUnit } from './instrument.ts'

/**
 * What errors and uncertainty of a calibration are in; '' where the record of the instrument says
 * no unit, so that a number would say nothing. A flat states its tolerance in µm already.
 */
export function calibrationUnit(
  instrument: Pick<Instrument, 'kind' | 'unit'>,
): InstrumentUnit | '' {
  return instrument.unit === '' && instrument.kind === 'optical-flat' ? 'um' : instrument.unit
}
