import { expect, it } from 'vitest'
import { expressionNames } from '../../../../src/science/uncertainty/expression/expression-names.ts'
import { parseExpression } from '../../../../src/science/uncertainty/expression/parse-expression.ts'

it('names come once each, in their order, and functions are none', () => {
  const names = expressionNames(parseExpression('sqrt(b) + a * -b / cos(c1) ^ a'))
  expect(names).toEqual(['b', 'a', 'c1'])
  expect(expressionNames(parseExpression('1 + 2'))).toEqual([])
})
