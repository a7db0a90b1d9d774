import { completeMeasuredValue } from '../../src/domain/complete-measured-value.ts'
import type { MeasuredValue } from '../../src/domain/measured-value.ts'
import { buildInstrument } from './build-instrument.ts'

/** A dial graduated in 0.01 mm, good to 0.013 mm over its range. */
export const builtDial = buildInstrument('dial-indicator', {
  unit: 'mm',
  resolutionStep: 0.01,
  largestError: 0.013,
})

/**
 * A shaft run-out of 0.04 mm as left, read once with `builtDial`, by user 1. The computed columns
 * follow the changes, unless these name them.
 */
export function buildMeasuredValue(changes: Partial<MeasuredValue> = {}): MeasuredValue {
  const measured = {
    id: 1,
    workOrderId: 1,
    characteristic: 'shaft-run-out',
    componentId: null,
    condition: 'as-left',
    instrumentId: builtDial.id,
    unit: 'mm',
    readings: [{ um: 40, typed: '0.04' }],
    sizeMm: null,
    budgetInput: {
      leverAngleDeg: null,
      cutOffMm: null,
      temperatureHalfWidthK: null,
      settingStandardUncertaintyUm: null,
    },
    note: '',
    replacesId: null,
    reason: '',
    recordedById: 1,
    recordedByName: 'Tess',
    recordedAt: '2026-11-24T10:20:00.000Z',
    replacedById: null,
    ...changes,
  } as const satisfies Partial<MeasuredValue>
  const context = {
    components: [],
    instruments: [{ ...builtDial, id: measured.instrumentId }],
    today: measured.recordedAt.slice(0, 10),
  }
  return { ...measured, ...completeMeasuredValue(measured, context), ...changes }
}
