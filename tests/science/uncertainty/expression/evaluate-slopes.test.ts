import { expect, it } from 'vitest'
import { evaluateDual } from '../../../../src/science/uncertainty/expression/evaluate-dual.ts'
import { evaluateSlopes } from '../../../../src/science/uncertainty/expression/evaluate-slopes.ts'
import { parseExpression } from '../../../../src/science/uncertainty/expression/parse-expression.ts'

const at = new Map([
  ['x', 0.7],
  ['y', 1.9],
  ['z', 3.1],
])

it('gives the rules of calculus for every name at once', () => {
  // By hand: d(x^2 y - z) = 2 x y dx + x^2 dy - dz.
  const got = evaluateSlopes(parseExpression('x^2 * y - z'), at)
  expect(got.get('x')).toBeCloseTo(2 * 0.7 * 1.9, 14) // rounding
  expect(got.get('y')).toBeCloseTo(0.49, 14)
  expect(got.get('z')).toBe(-1)
})

it.each([
  'x + y - z * x / y',
  'x^y + y^x + 2^z',
  'sqrt(x^2 + y^2) * exp(-x / y) / (1 + cos(x * z)^2) - log(y)',
  'tan(sin(x) * cos(y)) - -z * z * z',
  '1 / (x - y) / (z - 2 * (x + y))',
])('agrees with one name at a time for %s', (text) => {
  const node = parseExpression(text)
  const got = evaluateSlopes(node, at)
  for (const name of at.keys()) {
    const { slope } = evaluateDual(node, at, name)
    // The same factors in another order: some roundings.
    expect(Math.abs((got.get(name) ?? 0) - slope), name).toBeLessThan(1e-13 * (1 + Math.abs(slope)))
  }
})

it('knows squares of negative numbers, powers of 0, and x^0', () => {
  const slope = (text: string, x: number) =>
    evaluateSlopes(parseExpression(text), new Map([['x', x]])).get('x')
  expect(slope('x^2', -3)).toBe(-6)
  expect(slope('0^x', 2)).toBe(0)
  expect(slope('x^0', 0)).toBe(0)
  expect(slope('1 / x', 0)).toBe(Number.NEGATIVE_INFINITY)
})

it('leaves out a name that does not occur, and refuses one without a value', () => {
  expect(evaluateSlopes(parseExpression('2 * x'), at).has('y')).toBe(false)
  expect(() => evaluateSlopes(parseExpression('w'), at)).toThrow('unknown-name')
})
