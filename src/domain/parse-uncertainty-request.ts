import { type Distribution, distributions } from '../science/uncertainty/distributions.ts'
import { expressionNames } from '../science/uncertainty/expression/expression-names.ts'
import { expressionFunctions } from '../science/uncertainty/expression/expression-node.ts'
import { ModelFault } from '../science/uncertainty/expression/model-fault.ts'
import { parseExpression } from '../science/uncertainty/expression/parse-expression.ts'
import type { MeasurementModel, ModelQuantity } from '../science/uncertainty/measurement-model.ts'
import { monteCarloTrials } from '../science/uncertainty/monte-carlo.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

/** What the calculator of uncertainty is asked. */
export type UncertaintyRequest = {
  readonly model: MeasurementModel
  readonly probability: number
  readonly monteCarlo: { readonly trials: number; readonly seed: number } | null
}

export const uncertaintyFields = ['quantities', 'model', 'monteCarlo', 'probability'] as const
export const quantityFields = [
  'name',
  'value',
  'distribution',
  'halfWidth',
  'standardUncertainty',
  'degreesOfFreedom',
] as const

export const uncertaintyBounds = {
  quantityCount: { min: 1, max: 50 },
  number: { min: -1e15, max: 1e15 },
  uncertainty: { min: 0, max: 1e15 },
  degreesOfFreedom: { min: 0.5, max: 1e9 },
  probability: { min: 0.01, max: 0.9999 },
  trials: { min: monteCarloTrials.from, max: monteCarloTrials.to },
  seed: { min: 0, max: 0xffffffff },
  modelLength: 2000,
  nameLength: 40,
} as const

export const usualProbability = 0.95

/** Half width over standard uncertainty; JCGM 100:2008, 4.3.7 to 4.3.9. */
const widthOf = { rectangular: 3, triangular: 6, 'u-shaped': 2 } as const

/** Reads a request to evaluate a measurement model. */
export function parseUncertaintyRequest(input: Input): Parsed<UncertaintyRequest> {
  const fields = openFields(input)
  fields.only(...uncertaintyFields)
  const bounds = uncertaintyBounds
  const parts = fields.list('quantities', bounds.quantityCount)
  const quantities = parts.map(parseQuantity)
  refuseDoubles(parts, quantities)
  const expression = parseModel(fields, quantities)
  return fields.finish({
    model: { expression, quantities },
    probability: fields.optionalDecimal('probability', bounds.probability) ?? usualProbability,
    monteCarlo: input.monteCarlo == null ? null : parseMonteCarlo(fields.group('monteCarlo')),
  })
}

function parseQuantity(part: Fields): ModelQuantity {
  part.only(...quantityFields)
  const { number, degreesOfFreedom, nameLength } = uncertaintyBounds
  const name = part.text('name', nameLength)
  const isName = /^[A-Za-z]\w*$/.test(name)
  const isFunction = expressionFunctions.some((one) => one === name)
  if (name !== '' && (!isName || isFunction)) part.fault('name', 'not-a-name')
  const distribution = part.choice('distribution', distributions)
  const degrees = part.optionalDecimal('degreesOfFreedom', degreesOfFreedom)
  if (distribution === 't' && degrees === null && !isFaulty(part, 'degreesOfFreedom')) {
    part.fault('degreesOfFreedom', 'empty')
  }
  return {
    name,
    value: part.decimal('value', number),
    distribution,
    standardUncertainty: readUncertainty(part, distribution),
    degreesOfFreedom: degrees,
  }
}

/** A half width or a standard uncertainty, and one of them only. */
function readUncertainty(part: Fields, distribution: Distribution): number {
  const { uncertainty } = uncertaintyBounds
  const [hasWidth, hasStandard] = [part.isGiven('halfWidth'), part.isGiven('standardUncertainty')]
  if (hasWidth && hasStandard) {
    const names = { one: 'halfWidth', other: 'standardUncertainty' }
    part.fault('standardUncertainty', 'one-of-two', names)
    return 0
  }
  if (!hasWidth) return part.decimal('standardUncertainty', uncertainty)
  const halfWidth = part.decimal('halfWidth', uncertainty)
  if (distribution === 'normal' || distribution === 't') {
    part.fault('halfWidth', 'not-here')
    return 0
  }
  return halfWidth / Math.sqrt(widthOf[distribution])
}

function refuseDoubles(parts: readonly Fields[], quantities: readonly ModelQuantity[]): void {
  const known = new Set<string>()
  for (const [index, { name }] of quantities.entries()) {
    if (name !== '' && known.has(name)) parts[index]?.fault('name', 'same-name')
    known.add(name)
  }
}

/** The expression, held against the names of the quantities; in its own words where it is wrong. */
function parseModel(fields: Fields, quantities: readonly ModelQuantity[]): string {
  const before = fields.faults.length
  const expression = fields.text('model', uncertaintyBounds.modelLength)
  if (fields.faults.length > before) return expression
  try {
    const names = expressionNames(parseExpression(expression))
    const strange = names.find((name) => quantities.every((one) => one.name !== name))
    if (strange !== undefined) fields.fault('model', 'model-unknown-name', { name: strange })
  } catch (error) {
    if (!(error instanceof ModelFault)) throw error
    fields.fault('model', `model-${error.kind}`, { position: error.at + 1 })
  }
  return expression
}

function parseMonteCarlo(part: Fields) {
  part.only('trials', 'seed')
  const { trials, seed } = uncertaintyBounds
  return {
    trials: part.whole('trials', trials),
    seed: part.isGiven('seed') ? part.whole('seed', seed) : 1,
  }
}

function isFaulty(fields: Fields, name: string): boolean {
  return fields.faults.some((one) => one.field === name || one.field.endsWith(`.${name}`))
}
