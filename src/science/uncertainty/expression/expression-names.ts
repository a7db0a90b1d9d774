import type { ExpressionNode } from './expression-node.ts'

/**
 * Gives the names that an expression uses, each once, in the order in which they appear.
 *
 * @param node a parsed expression
 * @returns names without those of functions
 * Source: own code.
 * @example expressionNames({ kind: 'negate', of: { kind: 'name', name: 'a' } }).join() // a
 */
export function expressionNames(node: ExpressionNode): readonly string[] {
  const names = new Set<string>()
  const visit = (one: ExpressionNode): void => {
    if (one.kind === 'name') names.add(one.name)
    if (one.kind === 'negate' || one.kind === 'call') visit(one.of)
    if (one.kind === 'binary') {
      visit(one.left)
      visit(one.right)
    }
  }
  visit(node)
  return [...names]
}
