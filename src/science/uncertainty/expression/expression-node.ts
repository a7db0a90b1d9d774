/** The functions that an expression may call; angles in radians, logarithms natural. */
export const expressionFunctions = ['sqrt', 'exp', 'log', 'sin', 'cos', 'tan'] as const
export type ExpressionFunction = (typeof expressionFunctions)[number]

export type BinarySign = '+' | '-' | '*' | '/' | '^'

/** A parsed expression. */
export type ExpressionNode =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negate'; readonly of: ExpressionNode }
  | { readonly kind: 'call'; readonly call: ExpressionFunction; readonly of: ExpressionNode }
  | {
      readonly kind: 'binary'
      readonly sign: BinarySign
      readonly left: ExpressionNode
      readonly right: ExpressionNode
    }
