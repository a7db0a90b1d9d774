import type { ExpressionFunction, ExpressionNode } from './expression-node.ts'
import { ModelFault } from './model-fault.ts'

/**
 * Gives the derivatives of an expression by all of its names at once: as many as there are, for
 * the work of two or three values.
 *
 * Reverse differentiation: values from the leaves up, then how the result changes with each part
 * from the root down.
 *
 * @param node a parsed expression
 * @param values a number for each name
 * @returns a derivative for each name that occurs; not finite where the expression is not
 * @throws ModelFault unknown-name where a name has no value
 * Validity: a power with a varying exponent needs a base of 0 or more for its slope.
 * Source: the rules of differentiation; checked against evaluateDual, one name at a time.
 * @example evaluateSlopes({ kind: 'name', name: 'x' }, new Map([['x', 2]])).get('x') // 1
 */
export function evaluateSlopes(
  node: ExpressionNode,
  values: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const known = new Map<ExpressionNode, number>()
  fill(node, values, known)
  const slopes = new Map<string, number>()
  spread(node, 1, (one) => known.get(one) as number, slopes)
  return slopes
}

function fill(
  node: ExpressionNode,
  values: ReadonlyMap<string, number>,
  known: Map<ExpressionNode, number>,
): number {
  const of = (one: ExpressionNode) => fill(one, values, known)
  const value = computed(node, of, values)
  known.set(node, value)
  return value
}

function computed(
  node: ExpressionNode,
  of: (one: ExpressionNode) => number,
  values: ReadonlyMap<string, number>,
): number {
  if (node.kind === 'number') return node.value
  if (node.kind === 'negate') return -of(node.of)
  if (node.kind === 'call') return Math[node.call](of(node.of))
  if (node.kind === 'binary') return binary[node.sign](of(node.left), of(node.right))
  const value = values.get(node.name)
  if (value === undefined) throw new ModelFault('unknown-name', 0)
  return value
}

const binary = {
  '+': (a: number, b: number) => a + b,
  '-': (a: number, b: number) => a - b,
  '*': (a: number, b: number) => a * b,
  '/': (a: number, b: number) => a / b,
  '^': (a: number, b: number) => a ** b,
} as const

const derivative: Readonly<Record<ExpressionFunction, (x: number, value: number) => number>> = {
  sqrt: (_, value) => 0.5 / value,
  exp: (_, value) => value,
  log: (x) => 1 / x,
  sin: (x) => Math.cos(x),
  cos: (x) => -Math.sin(x),
  tan: (_, value) => 1 + value * value,
}

/** Hands the slope of the whole by a part on to what the part is made of; names add it up. */
function spread(
  node: ExpressionNode,
  slope: number,
  at: (one: ExpressionNode) => number,
  slopes: Map<string, number>,
): void {
  const on = (part: ExpressionNode, by: number) => spread(part, by, at, slopes)
  if (node.kind === 'name') slopes.set(node.name, (slopes.get(node.name) ?? 0) + slope)
  else if (node.kind === 'negate') on(node.of, -slope)
  else if (node.kind === 'call') on(node.of, slope * derivative[node.call](at(node.of), at(node)))
  else if (node.kind === 'binary') {
    const { left, right, sign } = node
    const [byLeft, byRight] = parts[sign](at(left), at(right), at(node))
    on(left, slope * byLeft)
    on(right, slope * byRight)
  }
}

type Parts = (a: number, b: number, value: number) => readonly [byLeft: number, byRight: number]

const parts: Readonly<Record<keyof typeof binary, Parts>> = {
  '+': () => [1, 1],
  '-': () => [1, -1],
  '*': (a, b) => [b, a],
  '/': (_, b, value) => [1 / b, -value / b],
  // 0 stays 0 for every power above 0, though it has no logarithm; x^0 is 1 everywhere.
  '^': (a, b, value) => [
    b === 0 ? 0 : b * a ** (b - 1),
    a === 0 && b > 0 ? 0 : value * Math.log(a),
  ],
}
