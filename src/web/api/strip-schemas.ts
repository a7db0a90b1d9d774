import { assemblyBounds, clipStates } from '../../domain/assembly.ts'
import { readingConditions } from '../../domain/flatness.ts'
import { springBounds } from '../../domain/spring-bounds.ts'
import { springCheckBounds } from '../../domain/spring-check.ts'
import { wearTrackBounds } from '../../domain/wear-track.ts'
import { answer, list, num, object, objectWith, oneOf, text, whole } from './json-schema.ts'

const frame = { note: text, replacesId: whole, reason: text }
const { lengthMm, loadN, rateNPerMm } = springBounds
const a = assemblyBounds

/** What records of the strip bench and of assembly take. */
export const stripRequestSchemas = {
  apiCreateWearTrackRequest: object(
    {
      componentId: whole,
      noseWidthMm: num(wearTrackBounds.widthMm),
      trackWidths: list(
        object({ widthMm: num(wearTrackBounds.widthMm) }, ['widthMm']),
        wearTrackBounds.widthCount,
      ),
      offsetMm: num(wearTrackBounds.offsetMm),
      offsetHour: whole,
      instrumentId: whole,
      ...frame,
    },
    ['componentId', 'noseWidthMm', 'trackWidths'],
  ),
  apiCreateSpringCheckRequest: object(
    {
      condition: oneOf(readingConditions),
      springsCount: whole,
      freeLengthMm: num(lengthMm),
      newLengthMm: num(lengthMm),
      loads: list(
        object({ lengthMm: num(lengthMm), loadN: num(loadN) }, ['lengthMm', 'loadN']),
        springCheckBounds.loadCount,
      ),
      rateNPerMm: num(rateNPerMm),
      workingLengthMm: num(lengthMm),
      solidLengthMm: num(lengthMm),
      instrumentId: whole,
      ...frame,
    },
    ['condition', 'freeLengthMm', 'workingLengthMm'],
  ),
  apiCreateAssemblyRequest: objectWith(
    {
      workingLengthMm: num(a.lengthMm),
      designWorkingLengthMm: num(a.lengthMm),
      workingLengthToleranceMm: num(a.toleranceMm),
      designLoadN: num(a.loadN),
      loadTolerancePercent: num(a.tolerancePercent),
      measuredLoadN: num(a.loadN),
      designSource: text,
      setScrews: list(
        object(
          {
            name: text,
            quantityCount: whole,
            torqueNm: num(a.torqueNm),
            designTorqueNm: num(a.torqueNm),
          },
          ['name'],
        ),
        a.lineCount,
      ),
      torqueTolerancePercent: num(a.tolerancePercent),
      clips: oneOf(clipStates),
      clipsCount: whole,
      lubricant: text,
      isTurningFree: { type: 'boolean' },
      ...frame,
    },
    ['workingLengthMm', 'clips', 'isTurningFree'],
    // Nor is a torque asked for without its tolerance and source, which no schema of a list says.
    {
      designWorkingLengthMm: ['workingLengthToleranceMm', 'designSource'],
      designLoadN: ['loadTolerancePercent', 'designSource'],
    },
  ),
} as const

const orNull = (type: string) => ({ type: [type, 'null'] })

/** What their answers hold at least. */
export const stripResponseSchemas = {
  apiCreateWearTrackAnswer: answer({ id: whole, movementUm: num(), method: text }),
  apiCreateSpringCheckAnswer: answer({
    id: whole,
    rateNPerMm: orNull('number'),
    workingLoadN: orNull('number'),
    method: text,
  }),
  apiCreateAssemblyAnswer: answer({
    id: whole,
    loadN: orNull('number'),
    loadFrom: orNull('string'),
    method: text,
  }),
} as const
