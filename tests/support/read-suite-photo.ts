import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { computeWholeFace } from '../../src/domain/compute-whole-face.ts'
import type { FlatnessReading } from '../../src/domain/flatness.ts'
import { noFlatnessBudgetInput } from '../../src/domain/flatness-budget-input.ts'
import { projectRoot } from '../../src/project-root.ts'
import { readPhotoBytes } from '../../src/workers/read-photo-bytes.ts'
import { buildFlatnessReading } from './build-flatness-reading.ts'

type Changes = Parameters<typeof buildFlatnessReading>[0] & {
  /** Which way the gap opens, as a technician saw it. */
  readonly opensTowardsDeg?: number
}

/** A reading of a synthetic photograph of fixtures/files/bands/suite, read as the thread does. */
export async function readSuitePhoto(
  name: string,
  changes: Changes = {},
): Promise<FlatnessReading> {
  const { opensTowardsDeg, ...reading } = changes
  const bytes = readFileSync(join(projectRoot(), 'fixtures/files/bands/suite', `${name}.jpg`))
  const found = await readPhotoBytes(bytes, null)
  if (!('result' in found) || found.result.kind !== 'edges') throw new Error(`no edges in ${name}`)
  const { outer, inner } = found.result
  if (outer === null || inner === null) throw new Error(`no edges in ${name}`)
  const wedge = opensTowardsDeg === undefined ? null : { opensTowardsDeg }
  const answer = await readPhotoBytes(bytes, { outer, inner, wedge: wedge ?? undefined })
  if (!('result' in answer) || answer.result.kind !== 'read') throw new Error(`${name} is refused`)
  const counted = buildFlatnessReading(reading)
  const outerDiameterMm = 60
  const asked = {
    componentId: counted.componentId,
    condition: counted.condition,
    lampInstrumentId: counted.lamp.instrumentId,
    flatInstrumentId: counted.flat.instrumentId,
    outerDiameterMm,
    innerDiameterMm: Math.round(600 * (inner.rx / outer.rx)) / 10,
    source: {
      kind: 'photo',
      photoId: 1,
      outer,
      inner,
      wedge,
      viewingAngleDeg: null,
      pressed: null,
    },
    soakMin: null,
    temperatureC: null,
    budgetInput: noFlatnessBudgetInput,
    note: '',
    replacesId: null,
    reason: '',
  } as const
  const { computed, wholeFace, viewingAngleDeg } = computeWholeFace(asked, answer.result, {
    lampId: 'helium',
    flatToleranceUm: 0.05,
    flatStandardUncertaintyUm: null,
  })
  return {
    ...counted,
    ...computed,
    sees: 'whole-surface',
    pattern: 'whole-face',
    directions: [],
    viewingAngleDeg,
    wholeFace,
  }
}
