import type { MeasurementModel } from '../../src/science/uncertainty/measurement-model.ts'

/**
 * A model's expression as a function of its quantities in their order: a route of its own, by way
 * of the language's own arithmetic. A name of no quantity throws.
 */
export function compileModel(model: MeasurementModel): (...values: readonly number[]) => number {
  const functions = ['sqrt', 'exp', 'log', 'sin', 'cos', 'tan'] as const
  const body = model.expression.replaceAll('^', '**')
  const names = model.quantities.map((quantity) => quantity.name)
  const run = new Function(...functions, ...names, `'use strict'; return ${body}`)
  return (...values) => run(...functions.map((name) => Math[name]), ...values) as number
}
