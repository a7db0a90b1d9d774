import {
  dynamicRunBounds,
  type NewDynamicRun,
  type RunSample,
  type RunStep,
  runChannelBounds,
} from './dynamic-run.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { readRunSamples } from './parse-run-samples.ts'
import type { Parsed } from './parsed.ts'

export const dynamicRunFields = [
  'startedAt',
  'liquid',
  'densityKgPerM3',
  'steps',
  'readings',
  'note',
  ...correctionFields,
] as const

export type DynamicRunBody = {
  readonly run: Omit<NewDynamicRun, 'workOrderId'>
  /** Sent with it; empty where a rig will push them. */
  readonly samples: readonly RunSample[]
}

/**
 * Reads a run as a program begins it: what runs, through which steps, and readings where there are some
 * already.
 * @param now RFC 3339; a run begins no later
 */
export function parseDynamicRunBody(input: Input, now: string): Parsed<DynamicRunBody> {
  const fields = openFields(input)
  fields.only(...dynamicRunFields)
  const { readings } = input
  const isEmpty = Array.isArray(readings) && readings.length === 0
  const hasReadings = readings !== undefined && readings !== null && !isEmpty
  return fields.finish({
    run: {
      startedAt: parseStart(fields, now),
      liquid: fields.optionalText('liquid', dynamicRunBounds.liquidLength),
      densityKgPerM3: fields.optionalDecimal('densityKgPerM3', dynamicRunBounds.densityKgPerM3),
      steps: parseSteps(fields),
      note: fields.optionalText('note', noteLength.max),
      ...parseCorrection(fields),
    },
    samples: hasReadings ? readRunSamples(fields, 'readings') : [],
  })
}

function parseStart(fields: Fields, now: string): string {
  if (!fields.isGiven('startedAt')) return now
  const startedAt = fields.instant('startedAt')
  if (/T[\d:.]+$/.test(fields.typed('startedAt').trim())) fields.fault('startedAt', 'no-offset')
  if (startedAt !== '' && startedAt > now) fields.fault('startedAt', 'later-than-now')
  return startedAt
}

function parseSteps(fields: Fields): readonly RunStep[] {
  return fields.list('steps', dynamicRunBounds.stepCount).map((part) => {
    part.only('name', 'holdS', 'speedPerMin', 'pressureKPaGauge', 'temperatureC')
    return {
      name: part.text('name', dynamicRunBounds.stepNameLength),
      holdS: part.optionalDecimal('holdS', dynamicRunBounds.holdS),
      speedPerMin: part.optionalDecimal('speedPerMin', runChannelBounds.speedPerMin),
      pressureKPaGauge: part.optionalDecimal('pressureKPaGauge', runChannelBounds.pressureKPaGauge),
      temperatureC: part.optionalDecimal('temperatureC', runChannelBounds.chamberTemperatureC),
    }
  })
}
