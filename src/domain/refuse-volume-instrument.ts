import type { Fields } from './fields.ts'
import type { VolumeExpansion } from './volume-expansion.ts'

/** A calibrated volume says how well it is known itself, and nothing of one found from it. */
export function refuseVolumeInstrument(fields: Fields, expansion: VolumeExpansion | null): void {
  if (expansion !== null && fields.isGiven('volumeInstrumentId')) {
    fields.fault('volumeInstrumentId', 'not-with-expansion')
  }
}
