import type { Fields } from './fields.ts'
import { type InstrumentUnit, instrumentKinds, type NewInstrument } from './instrument.ts'
import { unitsOfKind } from './units-of-kind.ts'

/** Wider than anything of a seal shop: what is beyond is a slip of the pen. */
export const instrumentNumberBounds = {
  range: { min: -1e6, max: 1e6 },
  step: { min: 1e-9, max: 1e6 },
} as const

type Numbers = Pick<
  NewInstrument,
  'unit' | 'rangeFrom' | 'rangeTo' | 'resolutionStep' | 'largestError'
>

/**
 * Reads range, step and largest permissible error; each may be left out, but a number without a
 * unit of the instrument's kind is refused: it could hold no reading against it.
 */
export function parseInstrumentNumbers(fields: Fields, kind: unknown): Numbers {
  const { range, step } = instrumentNumberBounds
  const rangeFrom = fields.optionalDecimal('rangeFrom', range)
  const rangeTo = fields.optionalDecimal('rangeTo', range)
  const resolutionStep = fields.optionalDecimal('resolutionStep', step)
  const largestError = fields.optionalDecimal('largestError', step)
  const isStated = [rangeFrom, rangeTo, resolutionStep, largestError].some((one) => one !== null)
  const unit = unitOf(fields, kind, isStated)
  checkRange(fields, { unit, rangeFrom, rangeTo, resolutionStep, largestError })
  return { unit, rangeFrom, rangeTo, resolutionStep, largestError }
}

function unitOf(fields: Fields, kind: unknown, isStated: boolean): InstrumentUnit | '' {
  const known = instrumentKinds.find((one) => one === kind)
  if (known === undefined) return ''
  const units = unitsOfKind[known]
  // A lamp has no such numbers: its wavelength is that of the lamp table.
  if (units.length > 0) {
    return isStated ? fields.choice('unit', units) : (fields.optionalChoice('unit', units) ?? '')
  }
  for (const name of ['unit', 'rangeFrom', 'rangeTo', 'resolutionStep', 'largestError']) {
    if (fields.isGiven(name)) fields.fault(name, 'not-here')
  }
  return ''
}

function checkRange(fields: Fields, numbers: Numbers): void {
  const { unit, rangeFrom, rangeTo } = numbers
  const isFaulty = (name: string) => fields.faults.some((one) => one.field === name)
  for (const name of ['rangeFrom', 'rangeTo'] as const) {
    const value = numbers[name]
    if (unit === 'C' && value !== null && value < -273.15 && !isFaulty(name)) {
      fields.fault(name, 'below-absolute-zero')
    }
  }
  if (rangeFrom === null || rangeTo === null || isFaulty('rangeFrom') || isFaulty('rangeTo')) return
  if (rangeFrom >= rangeTo) {
    fields.fault('rangeTo', 'not-above-start')
    return
  }
  const span = { min: instrumentNumberBounds.step.min, max: rangeTo - rangeFrom }
  for (const name of ['resolutionStep', 'largestError'] as const) {
    const value = numbers[name]
    if (value !== null && value > span.max && !isFaulty(name)) fields.fault(name, 'above', span)
  }
}
