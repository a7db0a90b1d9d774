import { volumeByExpansion } from '../science/leak/volume-by-expansion.ts'
import type { Fields } from './fields.ts'
import { staticTestBounds } from './static-test.ts'
import type { VolumeExpansion } from './volume-expansion.ts'

/** What the mass of the gas says; a fault beside the pressure that no opening gives. */
export function expandedVolumeL(
  fields: Fields,
  expansion: VolumeExpansion,
  name = 'joinedPressure',
): number {
  const { filledKPaAbs: filled, beforeKPaAbs: before, joinedKPaAbs: joined } = expansion
  if (!((joined - before) * (filled - joined) > 0)) {
    fields.fault(name, 'not-between')
    return 0
  }
  const { volumeL } = volumeByExpansion(expansion)
  const { min, max } = staticTestBounds.volumeL
  if (volumeL < min || volumeL > max) fields.fault(name, 'no-such-volume', { min, max })
  return volumeL
}
