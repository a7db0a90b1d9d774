import { describe, expect, it } from 'vitest'
import { evaluateDual } from '../../../../src/science/uncertainty/expression/evaluate-dual.ts'
import { ModelFault } from '../../../../src/science/uncertainty/expression/model-fault.ts'
import { parseExpression } from '../../../../src/science/uncertainty/expression/parse-expression.ts'

const computed = (text: string, values: Record<string, number> = {}): number =>
  evaluateDual(parseExpression(text), new Map(Object.entries(values)), '').value

function faultOf(text: string): { kind: string; at: number } {
  try {
    parseExpression(text)
  } catch (error) {
    if (error instanceof ModelFault) return { kind: error.kind, at: error.at }
  }
  throw new Error(`${text} was read`)
}

describe('an expression', () => {
  // The usual rules of precedence, as in the language the tests are written in.
  it.each([
    ['1 + 2 * 3', 1 + 2 * 3],
    ['(1 + 2) * 3', 9],
    ['8 - 4 - 2', 2],
    ['8 / 4 / 2', 1],
    ['-2^2', -4],
    ['(-2)^2', 4],
    ['2^3^2', 512],
    ['2^-1', 0.5],
    ['2**3', 8],
    ['--3', 3],
    ['+3', 3],
    ['2 * -3', -6],
    ['1.5e-3 * 2E3', 3],
    ['.5 + 5.', 5.5],
    ['sqrt(2)^2', Math.sqrt(2) ** 2],
    ['exp(log(3))', Math.exp(Math.log(3))],
    ['sin(1)^2 + cos(1)^2', Math.sin(1) ** 2 + Math.cos(1) ** 2],
    ['tan(0.3)', Math.tan(0.3)],
  ])('%s is %s', (text, value) => {
    expect(computed(text)).toBe(value)
  })

  it('takes names with digits, and one that begins like a function', () => {
    expect(computed('p1 / p2 + sine', { p1: 6, p2: 3, sine: 1 })).toBe(3)
    expect(computed('delta_p * 2', { delta_p: 4 })).toBe(8)
  })

  it.each([
    ['', 'empty', 0],
    ['  ', 'empty', 0],
    ['1 +', 'unexpected', 3],
    ['1 2', 'unexpected', 2],
    ['a $ b', 'unexpected', 2],
    ['(1', 'not-closed', 2],
    ['1)', 'unexpected', 1],
    ['f(1)', 'not-a-function', 0],
    ['sin + 1', 'not-a-function', 0],
    ['a.b', 'unexpected', 1],
    ['_a', 'unexpected', 0],
    ['a["b"]', 'unexpected', 1],
    [`${'('.repeat(101)}1${')'.repeat(101)}`, 'too-deep', 101],
    ['-'.repeat(150), 'too-deep', 101],
    ['1+'.repeat(1001), 'too-long', 2000],
  ])('refuses %s as %s', (text, kind, at) => {
    const fault = faultOf(text)
    expect(fault.kind).toBe(kind)
    expect(Math.abs(fault.at - at)).toBeLessThanOrEqual(1) // where one looks for it
  })
})
