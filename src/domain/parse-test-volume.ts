import { expandedVolumeL } from './expanded-volume-l.ts'
import { expansionFields } from './expansion-fields.ts'
import type { Fields } from './fields.ts'
import { parseGaugePressure } from './parse-gauge-pressure.ts'
import type { Scale } from './parse-gauge-scale.ts'
import { type NewStaticTest, staticTestBounds } from './static-test.ts'

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
