import type { LapAnswer } from '../../../views/lap-cycles/answer.tsx'
import { isConfirmed } from '../../domain/confirmed.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import { lapAdvice } from '../../domain/lap-advice.ts'
import { lapForecast } from '../../domain/lap-forecast.ts'
import { parseLapFigures } from '../../domain/parse-lap-cycle.ts'
import { typedText } from '../typed-text.ts'
import type { LapDesk } from './desk.ts'

/** What can be said of a cycle of which perhaps not all is entered yet. */
export function lapAnswerOf(input: Input, { evidence, faces }: LapDesk): LapAnswer {
  const fields = openFields(input, isConfirmed(input))
  const parsed = fields.finish(parseLapFigures(fields, input))
  // What is still empty is no mistake yet.
  const faults = fields.faults.filter((one) => one.kind !== 'empty')
  if (faults.length > 0) return { kind: 'faulty', faults }
  const face = faces.find((one) => String(one.id) === typedText(input.componentId))
  if (face === undefined || !parsed.ok) return { kind: 'ask' }
  const replaced = evidence.lapCycles.find((one) => String(one.id) === input.replacesId)
  const draft = { ...parsed.value, componentId: face.id, replacesId: replaced?.id ?? null }
  return {
    kind: 'outlook',
    forecast: lapForecast(draft, evidence),
    advice: lapAdvice(draft, face),
  }
}
