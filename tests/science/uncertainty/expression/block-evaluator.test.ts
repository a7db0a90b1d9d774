import { expect, it } from 'vitest'
import {
  blockEvaluator,
  blockLength,
} from '../../../../src/science/uncertainty/expression/block-evaluator.ts'
import { evaluateDual } from '../../../../src/science/uncertainty/expression/evaluate-dual.ts'
import { parseExpression } from '../../../../src/science/uncertainty/expression/parse-expression.ts'

it.each([
  'a + b - a * b / 3 + a^b + a^2 - -b',
  'sqrt(a) + exp(-b) + log(a) + sin(a) * cos(b) - tan(a / 9)',
  '2.5',
])('%s comes out as trial by trial', (text) => {
  const node = parseExpression(text)
  const [a, b] = [new Float64Array(blockLength), new Float64Array(blockLength)]
  const evaluate = blockEvaluator(
    node,
    new Map([
      ['a', a],
      ['b', b],
    ]),
  )
  for (const shift of [0.5, 1.5]) {
    for (let i = 0; i < blockLength; i++) {
      a[i] = shift + i / blockLength
      b[i] = shift + 2 - (3 * i) / blockLength
    }
    const block = evaluate()
    for (let i = 0; i < blockLength; i += 17) {
      const values = new Map([
        ['a', a[i] as number],
        ['b', b[i] as number],
      ])
      expect(block[i]).toBe(evaluateDual(node, values, '').value)
    }
  }
})

it('a name without a block is refused before any trial', () => {
  expect(() => blockEvaluator(parseExpression('a'), new Map())).toThrow('unknown-name')
})
