import type { Instrument } from '../../src/domain/instrument.ts'
import { addInCalibration, type Shop } from './build-shop.ts'

export type MeasuringInstruments = Readonly<
  Record<'dial' | 'lever' | 'micrometer' | 'profilometer', Instrument>
>

/** One of each kind that lengths are measured with, good to what its record says. */
export function addMeasuringInstruments({ store }: Pick<Shop, 'store'>): MeasuringInstruments {
  const add = addInCalibration
  const mm = { unit: 'mm', rangeFrom: 0 } as const
  return {
    dial: add(store, {
      ...mm,
      kind: 'dial-indicator',
      number: 'D-01',
      rangeTo: 10,
      resolutionStep: 0.01,
      largestError: 0.013,
    }),
    lever: add(store, {
      ...mm,
      kind: 'lever-indicator',
      number: 'E-01',
      rangeTo: 0.8,
      resolutionStep: 0.01,
      largestError: 0.012,
    }),
    micrometer: add(store, {
      ...mm,
      kind: 'micrometer',
      number: 'M-01',
      rangeTo: 25,
      resolutionStep: 0.001,
      largestError: 0.004,
    }),
    profilometer: add(store, {
      kind: 'profilometer',
      number: 'P-01',
      unit: 'um',
      rangeFrom: 0,
      rangeTo: 100,
      resolutionStep: 0.001,
      largestError: 0.01,
    }),
  }
}
