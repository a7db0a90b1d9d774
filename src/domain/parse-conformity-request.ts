import { type DecisionRule, decisionRules } from '../science/acceptance/decision-rule.ts'
import { usualUncertaintyShare } from '../science/acceptance/usual-uncertainty-share.ts'
import { houseRule } from './agreed-rule.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export const priorShapes = ['normal', 'gamma'] as const

/** How many items of one making scatter, known before any of them is measured. */
export type Prior = {
  readonly mean: number
  readonly standardDeviation: number
  /** `gamma` for what can't be below 0. */
  readonly shape: (typeof priorShapes)[number]
}

/** What the calculator of conformity is asked; every number in one unit, whichever it is. */
export type ConformityRequest = {
  readonly value: number
  readonly standardUncertainty: number
  /** Twice the standard uncertainty unless stated. */
  readonly expandedUncertainty: number
  readonly lowerLimit: number | undefined
  readonly upperLimit: number | undefined
  readonly rule: DecisionRule
  readonly probability: number
  readonly isNonNegative: boolean
  readonly uncertaintyShareAtMost: number
  readonly prior: Prior | null
}

export const conformityFields = [
  'value',
  'standardUncertainty',
  'expandedUncertainty',
  'lowerLimit',
  'upperLimit',
  'rule',
  'probability',
  'nonNegative',
  'uncertaintyShareAtMost',
  'prior',
] as const

export const priorFields = ['mean', 'standardDeviation', 'shape'] as const

export const conformityBounds = {
  number: { min: -1e9, max: 1e9 },
  uncertainty: { min: 0, max: 1e9 },
  /** At 0.5 the guard band is nothing, at 1 it has no end. */
  probability: { min: 0.501, max: 0.999999 },
  share: { min: 0.001, max: 1 },
  deviation: { min: 1e-12, max: 1e9 },
  /** Deviation over mean of a gamma prior: beyond it the commonest value would be 0. */
  relativeDeviation: { min: 0.01, max: 1 },
} as const

/** A value further below 0, in standard uncertainties, is none of a quantity without sign. */
const mostBelowZero = 30
/** Coverage factor where an expanded uncertainty is not stated; JCGM 100:2008, 6.3.3. */
const usualFactor = 2

/** Reads a request to decide whether a result conforms. */
export function parseConformityRequest(input: Input): Parsed<ConformityRequest> {
  const fields = openFields(input)
  fields.only(...conformityFields)
  const { number, uncertainty, probability, share } = conformityBounds
  const value = fields.decimal('value', number)
  const standardUncertainty = fields.decimal('standardUncertainty', uncertainty)
  const lowerLimit = fields.optionalDecimal('lowerLimit', number) ?? undefined
  const upperLimit = fields.optionalDecimal('upperLimit', number) ?? undefined
  const areLimitsSound = !isFaulty(fields, 'lowerLimit') && !isFaulty(fields, 'upperLimit')
  if (lowerLimit === undefined && upperLimit === undefined) {
    fields.fault('upperLimit', 'limit-needed')
  } else if (areLimitsSound && lowerLimit !== undefined && lowerLimit >= (upperLimit ?? Infinity)) {
    fields.fault('lowerLimit', 'lower-not-below')
  }
  const expandedUncertainty =
    fields.optionalDecimal('expandedUncertainty', {
      min: standardUncertainty,
      max: uncertainty.max,
    }) ?? usualFactor * standardUncertainty
  const isNonNegative = readYes(fields, input.nonNegative)
  if (isNonNegative && value < -mostBelowZero * standardUncertainty && !isFaulty(fields, 'value')) {
    fields.fault('value', 'too-far-below-zero')
  }
  const prior = input.prior == null ? null : parsePrior(fields.group('prior'))
  if (prior !== null && standardUncertainty === 0 && !isFaulty(fields, 'standardUncertainty')) {
    fields.fault('standardUncertainty', 'below', conformityBounds.deviation)
  }
  return fields.finish({
    value,
    standardUncertainty,
    expandedUncertainty,
    lowerLimit,
    upperLimit,
    rule: fields.choice('rule', decisionRules),
    probability: fields.optionalDecimal('probability', probability) ?? houseRule.probability,
    isNonNegative,
    uncertaintyShareAtMost:
      fields.optionalDecimal('uncertaintyShareAtMost', share) ?? usualUncertaintyShare,
    prior,
  })
}

function parsePrior(part: Fields): Prior {
  part.only(...priorFields)
  const { number, deviation, relativeDeviation } = conformityBounds
  const mean = part.decimal('mean', number)
  const standardDeviation = part.decimal('standardDeviation', deviation)
  const shape = part.choice('shape', priorShapes)
  const isSound = !isFaulty(part, 'mean') && !isFaulty(part, 'standardDeviation')
  if (shape === 'gamma' && isSound) {
    const [min, max] = [relativeDeviation.min * mean, relativeDeviation.max * mean]
    if (mean <= 0) part.fault('mean', 'below', { ...deviation })
    else if (standardDeviation < min) part.fault('standardDeviation', 'below', { min, max })
    else if (standardDeviation > max) part.fault('standardDeviation', 'above', { min, max })
  }
  return { mean, standardDeviation, shape }
}

/** A tick of a form (`yes`) or a JSON boolean; absent is no. */
function readYes(fields: Fields, value: unknown): boolean {
  if (value === true || value === 'yes') return true
  const isNo = value === undefined || value === null || value === '' || value === false
  if (!isNo) fields.fault('nonNegative', 'not-a-choice', { choices: 'true, false' })
  return false
}

function isFaulty(fields: Fields, name: string): boolean {
  return fields.faults.some((one) => one.field === name || one.field.endsWith(`.${name}`))
}
