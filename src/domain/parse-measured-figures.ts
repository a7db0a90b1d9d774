import {
  faceCharacteristics,
  type MeasuredCharacteristic,
  measuredCharacteristics,
} from './characteristic.ts'
import { faceStates } from './face-state.ts'
import type { Bounds, Fields } from './fields.ts'
import type { Instrument } from './instrument.ts'
import { type FigureKind, figureKindOf } from './measured-family.ts'
import {
  lengthUnits,
  type MeasuredBudgetInput,
  measuredValueBounds,
  type NewMeasuredValue,
  traceDirections,
  type ValueReading,
} from './measured-value.ts'
import { measuredWindowUm } from './measured-window.ts'
import { umPerUnit } from './um-per-unit.ts'

/** What the figure of a measured value depends on, beside what it is and its instrument. */
export type MeasuredFigures = Pick<NewMeasuredValue, 'unit' | 'readings' | 'sizeMm' | 'budgetInput'>

/** Says whether a characteristic belongs to one face of the seal. */
export function isOfFace(characteristic: MeasuredCharacteristic): boolean {
  return faceCharacteristics.some((one) => one === characteristic)
}

/** Reads what was measured; null where its field is faulty. */
export function parseCharacteristic(fields: Fields): MeasuredCharacteristic | null {
  const before = fields.faults.length
  const choice = fields.choice('characteristic', measuredCharacteristics)
  return fields.faults.length > before ? null : choice
}

/**
 * Reads the part of a measured value that its figure depends on, so that an answer can be shown
 * while the rest is not entered yet. Faults are collected in `fields`.
 * @param characteristic null where its field is faulty: the rest is looked at all the same
 * @param instrument what it was read with; undefined where its field was empty or faulty
 */
export function parseMeasuredFigures(
  fields: Fields,
  characteristic: MeasuredCharacteristic | null,
  instrument: Instrument | undefined,
): MeasuredFigures {
  return {
    ...parseReadings(fields, characteristic, instrument),
    sizeMm: parseSize(fields, characteristic),
    budgetInput: parseBudgetInput(fields, characteristic, instrument),
  }
}

/** Each is kept as it was typed. Without a unit only the numbers themselves are looked at. */
function parseReadings(
  fields: Fields,
  characteristic: MeasuredCharacteristic | null,
  instrument: Instrument | undefined,
): Pick<MeasuredFigures, 'unit' | 'readings'> {
  const before = fields.faults.length
  const unit = fields.choice('unit', lengthUnits)
  const isFaulty = fields.faults.length > before
  const factor = isFaulty ? null : umPerUnit(unit, instrument)
  if (!isFaulty && factor === null && instrument !== undefined) {
    fields.fault('unit', 'no-graduation', { number: instrument.number })
  }
  const read = (part: Fields): ValueReading => {
    part.only('value')
    const possible = boundsIn(measuredValueBounds.readingUm, factor ?? 1)
    const usual = characteristic === null ? possible : measuredWindowUm[characteristic]
    const value =
      factor === null
        ? part.decimal('value', { min: -1e9, max: 1e9 })
        : part.windowed('value', boundsIn(usual, factor), possible)
    return { um: value * (factor ?? 1), typed: part.typed('value').trim() }
  }
  const parts = fields.list('readings', measuredValueBounds.readingCount)
  return { unit, readings: parts.map(read) }
}

/** Told in the unit of the field, short enough to be read. */
function boundsIn({ min, max }: Bounds, factor: number): Bounds {
  const inUnit = (um: number) => Number((um / factor).toPrecision(6))
  return { min: inUnit(min), max: inUnit(max) }
}

/** The bore belongs to what is measured at the machine. */
function parseSize(fields: Fields, characteristic: MeasuredCharacteristic | null): number | null {
  if (characteristic !== null && isOfFace(characteristic)) return notHere(fields, 'sizeMm')
  return fields.optionalDecimal('sizeMm', measuredValueBounds.sizeMm)
}

function parseBudgetInput(
  fields: Fields,
  characteristic: MeasuredCharacteristic | null,
  instrument: Instrument | undefined,
): MeasuredBudgetInput {
  type NumberName = Exclude<keyof MeasuredBudgetInput, 'traceDirection' | 'faceState'>
  const read = (name: NumberName, isAsked: boolean, bounds: Bounds = measuredValueBounds[name]) =>
    isAsked ? fields.optionalDecimal(name, bounds) : notHere(fields, name)
  const isOf = (kind: FigureKind) =>
    characteristic === null || figureKindOf[characteristic] === kind
  const isLever = instrument === undefined || instrument.kind === 'lever-indicator'
  const choose = <T extends string>(name: string, choices: readonly T[]) =>
    isOf('roughness') ? fields.optionalChoice(name, choices) : notHere(fields, name)
  const cutOffMm = read('cutOffMm', isOf('roughness'))
  return {
    leverAngleDeg: read('leverAngleDeg', isOf('dial') && isLever),
    cutOffMm,
    traceDirection: choose('traceDirection', traceDirections),
    tipRadiusUm: read('tipRadiusUm', isOf('roughness')),
    evaluationLengthMm: read('evaluationLengthMm', isOf('roughness'), lengthBounds(cutOffMm)),
    faceState: choose('faceState', faceStates),
    temperatureHalfWidthK: read('temperatureHalfWidthK', isOf('height')),
    settingStandardUncertaintyUm: read('settingStandardUncertaintyUm', isOf('height')),
  }
}

/** A profile shorter than its cut-off has no waves that the cut-off lets through. */
function lengthBounds(cutOffMm: number | null): Bounds {
  const { min, max } = measuredValueBounds.evaluationLengthMm
  // A faulty cut-off is no number.
  return { min: Math.max(min, Number.isFinite(cutOffMm) ? (cutOffMm ?? min) : min), max }
}

function notHere(fields: Fields, name: string): null {
  if (fields.isGiven(name)) fields.fault(name, 'not-here')
  return null
}
