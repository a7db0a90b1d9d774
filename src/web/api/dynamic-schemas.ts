import {
  dynamicRunBounds,
  type RunChannel,
  runChannelBounds,
  runChannels,
} from '../../domain/dynamic-run.ts'
import type { dynamicRunFields } from '../../domain/parse-dynamic-run-body.ts'
import { answer, list, num, object, text, whole } from './json-schema.ts'

const channels = Object.fromEntries(
  runChannels.map((channel) => [channel, num(runChannelBounds[channel])]),
) as Record<RunChannel, unknown>
const sample = object({ timeS: num(dynamicRunBounds.timeS), ...channels }, ['timeS'])
const samples = list(sample, dynamicRunBounds.sampleCount)
const numberOrNull = { type: ['number', 'null'] }

/** What a run and its readings take. */
export const dynamicRequestSchemas = {
  apiCreateDynamicRunRequest: object({
    startedAt: { type: 'string', format: 'date-time' },
    liquid: text,
    densityKgPerM3: num(dynamicRunBounds.densityKgPerM3),
    steps: list(
      object(
        {
          name: text,
          holdS: num(dynamicRunBounds.holdS),
          speedPerMin: num(runChannelBounds.speedPerMin),
          pressureKPaGauge: num(runChannelBounds.pressureKPaGauge),
          temperatureC: num(runChannelBounds.chamberTemperatureC),
        },
        ['name'],
      ),
      dynamicRunBounds.stepCount,
    ),
    readings: samples,
    note: text,
    replacesId: whole,
    reason: text,
  } satisfies Record<(typeof dynamicRunFields)[number], unknown>),
  apiAddRunSamplesRequest: object({ samples }, ['samples']),
} as const

/** What they answer at least. */
export const dynamicResponseSchemas = {
  apiCreateDynamicRunAnswer: answer({
    id: whole,
    startedAt: text,
    sampleCount: whole,
    steadyGPerH: numberOrNull,
    steadyMlPerH: numberOrNull,
    confidence95GPerH: { type: ['array', 'null'], items: num() },
    cautions: list(text),
  }),
  apiAddRunSamplesAnswer: answer({ runId: whole, batchId: whole, keptCount: whole }),
} as const
