import { type Assembly, assemblyBounds, clipStates, type NewAssembly } from './assembly.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import type { Parsed } from './parsed.ts'
import { solidLengthOf } from './solid-length-of.ts'
import type { SpringCheck } from './spring-check.ts'
import { typedMm } from './typed-mm.ts'
import type { TypedMm } from './wear-track.ts'

export const assemblyFields = [
  'workingLengthMm',
  'designWorkingLengthMm',
  'workingLengthToleranceMm',
  'designLoadN',
  'loadTolerancePercent',
  'measuredLoadN',
  'designSource',
  'setScrews',
  'torqueTolerancePercent',
  'clips',
  'clipsCount',
  'lubricant',
  'isTurningFree',
  'note',
  ...correctionFields,
] as const

/**
 * Reads how a seal was put together, from the form or the machine interface alike.
 * @param checks of its springs: none goes shorter than solid
 */
export function parseAssembly(
  input: Input,
  checks: readonly SpringCheck[],
): Parsed<Omit<NewAssembly, 'workOrderId'>> {
  const fields = openFields(input)
  fields.only(...assemblyFields)
  const b = assemblyBounds
  const measuredN = fields.optionalDecimal('measuredLoadN', b.loadN)
  const values = {
    workingLength: parseWorkingLength(fields, checks),
    designWorkingLengthMm: fields.optionalDecimal('designWorkingLengthMm', b.lengthMm),
    workingLengthToleranceMm: fields.optionalDecimal('workingLengthToleranceMm', b.toleranceMm),
    designLoadN: fields.optionalDecimal('designLoadN', b.loadN),
    loadTolerancePercent: fields.optionalDecimal('loadTolerancePercent', b.tolerancePercent),
    measuredLoad:
      measuredN === null ? null : { n: measuredN, typed: fields.typed('measuredLoadN').trim() },
    designSource: fields.optionalText('designSource', b.source.max),
    setScrews: parseScrews(fields),
    torqueTolerancePercent: fields.optionalDecimal('torqueTolerancePercent', b.tolerancePercent),
    ...parseClips(fields),
    lubricant: fields.optionalText('lubricant', b.lubricant.max),
    isTurningFree: parseFree(fields, input),
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  }
  requireSource(fields, values)
  requireTolerances(fields, values)
  return fields.finish(values)
}

function parseWorkingLength(fields: Fields, checks: readonly SpringCheck[]): TypedMm {
  const name = 'workingLengthMm'
  const length = typedMm(fields, name, assemblyBounds.lengthMm)
  const solid = solidLengthOf(checks)
  const isFaulty = fields.faults.some((one) => one.field === name)
  if (solid !== null && length.mm < solid.mm && !isFaulty) {
    fields.fault(name, 'shorter-than-solid', { solidMm: solid.mm })
  }
  return length
}

function parseScrews(fields: Fields): Assembly['setScrews'] {
  const { lineCount, name, screwCount, torqueNm } = assemblyBounds
  return fields.list('setScrews', lineCount).map((part) => {
    part.only('name', 'quantityCount', 'torqueNm', 'designTorqueNm')
    return {
      name: part.text('name', name.max),
      quantityCount: part.optionalWhole('quantityCount', screwCount) ?? 1,
      torqueNm: part.optionalDecimal('torqueNm', torqueNm),
      designTorqueNm: part.optionalDecimal('designTorqueNm', torqueNm),
      torqueTyped: part.typed('torqueNm').trim(),
      designTorqueTyped: part.typed('designTorqueNm').trim(),
    }
  })
}

/** A number of clips belongs to clips that are fitted. */
function parseClips(fields: Fields): Pick<NewAssembly, 'clips' | 'clipsCount'> {
  const clips = fields.choice('clips', clipStates)
  const clipsCount = fields.optionalWhole('clipsCount', assemblyBounds.clipsCount)
  if (clips !== 'fitted' && clipsCount !== null) fields.fault('clipsCount', 'not-here')
  return { clips, clipsCount }
}

/** Cards of a form (`yes`, `no`) or a JSON body (`true`, `false`): it has to be said. */
function parseFree(fields: Fields, { isTurningFree: value }: Input): boolean {
  if (value === true || value === 'yes') return true
  if (value === false || value === 'no') return false
  const isEmpty = value === undefined || value === null || value === ''
  fields.fault('isTurningFree', isEmpty ? 'empty' : 'not-a-choice', { choices: 'yes, no' })
  return false
}

/** What is asked for stands somewhere: a design value without a source is hearsay. */
function requireSource(
  fields: Fields,
  values: Pick<NewAssembly, 'designWorkingLengthMm' | 'designLoadN' | 'setScrews' | 'designSource'>,
): void {
  const { designWorkingLengthMm, designLoadN, setScrews, designSource } = values
  const isAsked = designWorkingLengthMm !== null || designLoadN !== null || asksTorque(setScrews)
  const isFaulty = fields.faults.some((one) => one.field === 'designSource')
  if (isAsked && designSource === '' && !isFaulty) fields.fault('designSource', 'empty')
}

/** A value asked for without a tolerance can't be compared: nothing set would ever be as asked. */
function requireTolerances(
  fields: Fields,
  values: Pick<
    NewAssembly,
    | 'designWorkingLengthMm'
    | 'workingLengthToleranceMm'
    | 'designLoadN'
    | 'loadTolerancePercent'
    | 'setScrews'
    | 'torqueTolerancePercent'
  >,
): void {
  const { designWorkingLengthMm, designLoadN, setScrews } = values
  const need = (name: keyof typeof values & string, isAsked: boolean) => {
    if (isAsked && values[name] === null) fields.fault(name, 'tolerance-needed')
  }
  need('workingLengthToleranceMm', designWorkingLengthMm !== null)
  need('loadTolerancePercent', designLoadN !== null)
  need('torqueTolerancePercent', asksTorque(setScrews))
}

function asksTorque(setScrews: NewAssembly['setScrews']): boolean {
  return setScrews.some((one) => one.designTorqueNm !== null)
}
