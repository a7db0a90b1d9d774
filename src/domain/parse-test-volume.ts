import { volumeByExpansion } from '../science/leak/volume-by-expansion.ts'
import type { Fields } from './fields.ts'
import { parseGaugePressure } from './parse-gauge-pressure.ts'
import type { Scale } from './parse-gauge-scale.ts'
import { type NewStaticTest, staticTestBounds } from './static-test.ts'
import type { VolumeExpansion } from './volume-expansion.ts'

/** Fields of the form that a volume by expansion is found from. */
export const expansionFields = [
  'knownVolumeL',
  'filledPressure',
  'beforePressure',
  'joinedPressure',
] as const

/** Stated, or found by expansion from a known volume; never both. */
export function parseTestVolume(
  fields: Fields,
  scale: Scale | null,
): Pick<NewStaticTest, 'volumeL' | 'expansion'> {
  const { volumeL } = staticTestBounds
  if (!expansionFields.some((name) => fields.isGiven(name))) {
    return { volumeL: fields.decimal('volumeL', volumeL), expansion: null }
  }
  if (fields.isGiven('volumeL')) fields.fault('volumeL', 'by-expansion')
  const before = fields.faults.length
  const expansion = {
    knownVolumeL: fields.decimal('knownVolumeL', volumeL),
    filledKPaAbs: parseGaugePressure(fields, 'filledPressure', scale),
    beforeKPaAbs: parseGaugePressure(fields, 'beforePressure', scale),
    joinedKPaAbs: parseGaugePressure(fields, 'joinedPressure', scale),
    typed: {
      knownVolumeL: fields.typed('knownVolumeL').trim(),
      filled: fields.typed('filledPressure').trim(),
      before: fields.typed('beforePressure').trim(),
      joined: fields.typed('joinedPressure').trim(),
    },
  }
  const isRead = scale !== null && fields.faults.length === before
  return { volumeL: isRead ? expandedVolumeL(fields, expansion) : 0, expansion }
}

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
