import {
  findingBounds,
  findingTerms,
  radialPlaces,
  severities,
  suspectedCauses,
} from '../../domain/finding.ts'
import type { findingFields } from '../../domain/parse-finding.ts'
import { partLineBounds, type partLineFields } from '../../domain/parse-part-line.ts'
import { partFates } from '../../domain/part-line.ts'
import { stripParts } from '../../domain/strip-part.ts'
import { answer, num, object, oneOf, text, whole } from './json-schema.ts'

const yes = { type: 'boolean' }
const day = { type: 'string', format: 'date' }

/** What is recorded when a seal is stripped. */
export const findingRequestSchemas = {
  apiCreateFindingRequest: object(
    {
      part: oneOf(stripParts),
      term: oneOf(findingTerms),
      severity: oneOf(severities),
      fromHour: num(findingBounds.hour),
      toHour: num(findingBounds.hour),
      radialPlace: oneOf(radialPlaces),
      isBeforeCleaning: yes,
      observation: text,
      suspectedCause: oneOf(suspectedCauses),
      causeNote: text,
      isPhotoTakenOut: yes,
      replacesId: whole,
      reason: text,
    } satisfies Record<(typeof findingFields)[number], unknown>,
    ['part', 'term'],
  ),
  apiCreatePartLineRequest: object(
    {
      part: oneOf(stripParts),
      description: text,
      fate: oneOf(partFates),
      quantityCount: { ...num(partLineBounds.quantityCount), type: 'integer' },
      batch: text,
      certificate: text,
      compound: text,
      curedOn: day,
      note: text,
      replacesId: whole,
      reason: text,
    } satisfies Record<(typeof partLineFields)[number], unknown>,
    ['part', 'fate'],
  ),
} as const

export const findingResponseSchemas = {
  apiCreateFindingAnswer: answer({ id: whole, part: text, term: text, recordedAt: text }),
  apiCreatePartLineAnswer: answer({ id: whole, part: text, fate: text, recordedAt: text }),
} as const
