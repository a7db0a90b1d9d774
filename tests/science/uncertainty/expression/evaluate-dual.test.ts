import { expect, it } from 'vitest'
import { evaluateDual } from '../../../../src/science/uncertainty/expression/evaluate-dual.ts'
import { parseExpression } from '../../../../src/science/uncertainty/expression/parse-expression.ts'

const at = new Map([
  ['x', 0.7],
  ['y', 1.9],
])

// The rules of calculus, written out by hand for x = 0.7, y = 1.9.
it.each([
  ['x^3', 3 * 0.7 ** 2],
  ['x * y', 1.9],
  ['y / x', -1.9 / 0.49],
  ['x^y', 1.9 * 0.7 ** 0.9],
  ['y^x', 1.9 ** 0.7 * Math.log(1.9)],
  ['sqrt(x)', 0.5 / Math.sqrt(0.7)],
  ['exp(2 * x)', 2 * Math.exp(1.4)],
  ['log(x)', 1 / 0.7],
  ['sin(x * y)', 1.9 * Math.cos(0.7 * 1.9)],
  ['cos(x)', -Math.sin(0.7)],
  ['tan(x)', 1 / Math.cos(0.7) ** 2],
  ['-x - x + y', -2],
  ['y', 0],
])('the slope of %s by x is %s', (text, slope) => {
  // Some roundings of doubles, each 1e-16 relative.
  expect(evaluateDual(parseExpression(text), at, 'x').slope).toBeCloseTo(slope, 13)
})

it('agrees with central differences for a long expression', () => {
  const node = parseExpression('sqrt(x^2 + y^2) * exp(-x / y) / (1 + cos(x * y)^2) - log(y)')
  const value = (x: number) => evaluateDual(node, new Map(at).set('x', x), '').value
  const step = 1e-5
  const difference = (value(0.7 + step) - value(0.7 - step)) / (2 * step)
  // The difference is wrong by the third derivative times 1e-10 / 6, and by rounding over 1e-5.
  expect(Math.abs(evaluateDual(node, at, 'x').slope - difference)).toBeLessThan(1e-9)
})

it('a square of a negative number has its slope, whose logarithm has none', () => {
  expect(evaluateDual(parseExpression('x^2'), new Map([['x', -3]]), 'x').slope).toBe(-6)
})

it('0 to a power above 0 does not change with the power; at 0 and below it has no slope', () => {
  const slope = (y: number) => evaluateDual(parseExpression('0^y'), new Map([['y', y]]), 'y').slope
  expect([slope(2), slope(0.5)]).toEqual([0, 0])
  expect([slope(0), slope(-1)].some(Number.isFinite)).toBe(false)
})

it('a power of 0 is 1 everywhere and has no slope, at 0 too', () => {
  expect(evaluateDual(parseExpression('x^0'), new Map([['x', 0]]), 'x')).toEqual({
    value: 1,
    slope: 0,
  })
})

it('a name without a value is refused', () => {
  expect(() => evaluateDual(parseExpression('z'), at, 'x')).toThrow('unknown-name')
})
