import { flatnessBounds, readingConditions } from '../../domain/flatness.ts'
import { num, object, oneOf, text, whole } from './json-schema.ts'
import { markedRequestSchemas } from './marked-schemas.ts'
import { photoRequestSchemas } from './photo-schemas.ts'

/** What every reading of a whole face states beside how it was read. */
const recorded = {
  faceId: whole,
  condition: oneOf(readingConditions),
  lampInstrumentId: whole,
  opticalFlatInstrumentId: whole,
  soakMin: num(flatnessBounds.soakMin),
  temperatureC: num(flatnessBounds.temperatureC),
  note: text,
  replacesId: whole,
  reason: text,
  confirmBeyondWindow: { type: 'boolean' },
} as const
const required = ['faceId', 'condition', 'lampInstrumentId', 'opticalFlatInstrumentId']

const { apiMarkedFlatnessRequest: marked } = markedRequestSchemas
const { wavelengthHalfWidthNm: _1, ...markedFields } = marked.properties
const { wavelengthHalfWidthNm: _2, ...photoFields } =
  photoRequestSchemas.apiPhotoFlatnessRequest.properties.request.properties

/** Marks may be recorded without knowing which way the gap opens: their sign is then open. */
const markedRequired = (marked.required ?? []).filter((one) => one !== 'increasingTowards')

/** Whole faces as records: the fields of the calculators, with face, instruments and conditions. */
export const wholeFaceRequestSchemas = {
  apiCreateMarkedReadingRequest: object({ ...markedFields, ...recorded }, [
    ...markedRequired,
    ...required,
  ]),
  apiCreatePhotoReadingRequest: object(
    {
      image: { type: 'string', contentMediaType: 'image/*' },
      request: object({ ...photoFields, points: marked.properties.points, ...recorded }, [
        'outerDiameterMm',
        'innerDiameterMm',
        ...required,
      ]),
    },
    ['image', 'request'],
  ),
} as const
