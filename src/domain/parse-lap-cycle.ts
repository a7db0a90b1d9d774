import { confirmField, isConfirmed } from './confirmed.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import {
  abrasives,
  gritLength,
  type LapFigureName,
  type LapFigures,
  lapCycleBounds,
  lapFigureNames,
  lapPurposes,
  type NewLapCycle,
  plateForms,
  plateLength,
  stockWindowUm,
} from './lap-cycle.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { idBounds } from './parse-instrument-id.ts'
import type { Parsed } from './parsed.ts'
import { type Component, faceKinds } from './seal.ts'

export const lapCycleFields = [
  'componentId',
  'purpose',
  'plate',
  'plateForm',
  'abrasive',
  'grit',
  ...lapFigureNames,
  'isNewRing',
  'note',
  ...correctionFields,
  confirmField,
] as const

export type LapCycleContext = {
  /** Of the seal that the order is for. */
  readonly components: readonly Component[]
}

/**
 * Reads a lap cycle, from the form or the machine interface alike. Only the face and the plate are
 * asked for: who has wet hands writes down what there is.
 */
export function parseLapCycle(
  input: Input,
  { components }: LapCycleContext,
): Parsed<Omit<NewLapCycle, 'workOrderId'>> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...lapCycleFields)
  const componentId = parseFace(fields, components)
  const plate = fields.text('plate', plateLength.max)
  return fields.finish({
    componentId,
    plate,
    ...parseLapFigures(fields, input),
    grit: fields.optionalText('grit', gritLength.max),
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

/**
 * Reads the part of a cycle that heights and warnings depend on, so that they can be shown while
 * the rest is not entered yet. Faults are collected in `fields`.
 */
export function parseLapFigures(fields: Fields, input: Input) {
  const figures = parseFigures(fields)
  const plateForm = fields.optionalChoice('plateForm', plateForms)
  const abrasive = fields.optionalChoice('abrasive', abrasives)
  requireSense(fields, figures, plateForm)
  const given = lapFigureNames.filter((name) => figures[name] !== null)
  return {
    ...figures,
    purpose: fields.optionalChoice('purpose', lapPurposes) ?? 'lap',
    plateForm,
    abrasive,
    isNewRing: parseNewRing(fields, input),
    typed: Object.fromEntries(given.map((name) => [name, fields.typed(name).trim()])),
  }
}

const stockNames: readonly LapFigureName[] = ['plannedStockUm', 'stockUm']

function parseFigures(fields: Fields): LapFigures {
  const read = (name: LapFigureName) =>
    stockNames.includes(name)
      ? fields.optionalWindowed(name, windowOf(fields, name), lapCycleBounds[name])
      : fields.optionalDecimal(name, lapCycleBounds[name])
  const pairs = lapFigureNames.map((name) => [name, read(name)] as const)
  return Object.fromEntries(pairs) as Record<LapFigureName, number | null>
}

/** Nothing taken off is no slip of a unit. */
function windowOf(fields: Fields, name: LapFigureName) {
  const isNought = /^0*[.,]?0*$/.test(fields.typed(name).trim())
  return isNought ? { ...stockWindowUm, min: 0 } : stockWindowUm
}

/** A face is not higher than it was, and an amount out of flat needs a way it goes. */
function requireSense(fields: Fields, figures: LapFigures, plateForm: string | null): void {
  const { heightBeforeMm: before, heightAfterMm: after, plateSagUm } = figures
  const isFaulty = fields.faults.some((one) => one.field.startsWith('height'))
  if (!isFaulty && before !== null && after !== null && after > before) {
    fields.fault('heightAfterMm', 'after-above-before')
  }
  if (plateSagUm === null || plateSagUm === 0) return
  if (plateForm === 'flat') fields.fault('plateSagUm', 'not-here')
  else if (!fields.isGiven('plateForm')) fields.fault('plateForm', 'empty')
}

/** A box of a form (`yes`) or a JSON body (`true`); left out, the ring is the one that came. */
function parseNewRing(fields: Fields, { isNewRing: value }: Input): boolean {
  if (value === true || value === 'yes') return true
  const isNo = value === undefined || value === null || value === false || value === ''
  if (!isNo) fields.fault('isNewRing', 'not-a-choice', { choices: 'yes' })
  return false
}

function parseFace(fields: Fields, components: readonly Component[]): number {
  const before = fields.faults.length
  const id = fields.whole('componentId', idBounds)
  if (fields.faults.length > before) return id
  const kind = components.find((one) => one.id === id)?.kind
  if (!faceKinds.some((one) => one === kind)) fields.fault('componentId', 'not-known')
  return id
}
