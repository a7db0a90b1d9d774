import type { ExpressionFunction, ExpressionNode } from './expression-node.ts'
import { ModelFault } from './model-fault.ts'

/** A value with its derivative. */
export interface Dual {
  readonly value: number
  readonly slope: number
}

/**
 * Gives the value of an expression and its derivative by one of its names, both exact but for the
 * rounding of doubles.
 *
 * Forward differentiation: every operation carries (value, slope) by the rules of calculus.
 *
 * @param node a parsed expression
 * @param values a number for each name
 * @param by the name to differentiate by; a name that does not occur gives a slope of 0
 * @returns value and slope; not finite where the expression is not
 * @throws ModelFault unknown-name where a name has no value
 * Validity: a power with a varying exponent needs a base of 0 or more for its slope.
 * Source: the rules of differentiation; checked against central differences.
 * @example evaluateDual({ kind: 'name', name: 'x' }, new Map([['x', 2]]), 'x').slope // 1
 */
export function evaluateDual(
  node: ExpressionNode,
  values: ReadonlyMap<string, number>,
  by: string,
): Dual {
  switch (node.kind) {
    case 'number':
      return { value: node.value, slope: 0 }
    case 'name': {
      const value = values.get(node.name)
      if (value === undefined) throw new ModelFault('unknown-name', 0)
      return { value, slope: node.name === by ? 1 : 0 }
    }
    case 'negate': {
      const { value, slope } = evaluateDual(node.of, values, by)
      return { value: -value, slope: -slope }
    }
    case 'call':
      return called(node.call, evaluateDual(node.of, values, by))
    case 'binary': {
      const left = evaluateDual(node.left, values, by)
      return binary[node.sign](left, evaluateDual(node.right, values, by))
    }
  }
}

const binary = {
  '+': (a: Dual, b: Dual): Dual => ({ value: a.value + b.value, slope: a.slope + b.slope }),
  '-': (a: Dual, b: Dual): Dual => ({ value: a.value - b.value, slope: a.slope - b.slope }),
  '*': (a: Dual, b: Dual): Dual => ({
    value: a.value * b.value,
    slope: a.slope * b.value + a.value * b.slope,
  }),
  '/': (a: Dual, b: Dual): Dual => ({
    value: a.value / b.value,
    slope: (a.slope - (a.value / b.value) * b.slope) / b.value,
  }),
  '^': power,
} as const

function power(a: Dual, b: Dual): Dual {
  const value = a.value ** b.value
  // A constant part adds nothing, also where its own factor has no value, as log of a negative;
  // and x^0 is 1 everywhere.
  const byBase = a.slope === 0 || b.value === 0 ? 0 : b.value * a.value ** (b.value - 1) * a.slope
  // 0 stays 0 for every power above 0, though it has no logarithm.
  const isFlat = b.slope === 0 || (a.value === 0 && b.value > 0)
  const byExponent = isFlat ? 0 : value * Math.log(a.value) * b.slope
  return { value, slope: byBase + byExponent }
}

function called(call: ExpressionFunction, { value: x, slope }: Dual): Dual {
  const value = Math[call](x)
  const derivative = {
    sqrt: () => 0.5 / value,
    exp: () => value,
    log: () => 1 / x,
    sin: () => Math.cos(x),
    cos: () => -Math.sin(x),
    tan: () => 1 + value * value,
  }[call]()
  return { value, slope: slope === 0 ? 0 : derivative * slope }
}
