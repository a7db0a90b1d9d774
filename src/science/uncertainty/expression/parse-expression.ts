import { type BinarySign, type ExpressionNode, expressionFunctions } from './expression-node.ts'
import { ModelFault } from './model-fault.ts'

const longest = 2000
const deepest = 100

type Token = { readonly text: string; readonly at: number }

const tokenPattern = /\s*(?:((?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|([A-Za-z]\w*)|(\*\*|[-+*/^()]))/y

/**
 * Reads an expression of arithmetic: numbers, names, + - * / ^ (or **), parentheses and the
 * functions sqrt, exp, log, sin, cos, tan. Powers bind from the right and before a sign:
 * -2^2 = -4, 2^3^2 = 512, 2^-1 = 0.5.
 *
 * @param text at most 2000 characters, nested at most 100 deep
 * @returns its tree
 * @throws ModelFault with what is wrong and where
 * Source: own grammar, the usual rules of precedence.
 * @example parseExpression('2 * x').kind // binary
 */
export function parseExpression(text: string): ExpressionNode {
  if (text.length > longest) throw new ModelFault('too-long', longest)
  const tokens = tokensOf(text)
  if (tokens.length === 0) throw new ModelFault('empty', 0)
  const reader = new Reader(tokens, text.length)
  const node = reader.sum()
  const rest = reader.peek()
  if (rest !== undefined) throw new ModelFault('unexpected', rest.at)
  return node
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = []
  const end = text.trimEnd().length
  tokenPattern.lastIndex = 0
  while (tokenPattern.lastIndex < end) {
    const from = tokenPattern.lastIndex
    const found = tokenPattern.exec(text)
    if (found === null) throw new ModelFault('unexpected', from + spacesAt(text, from))
    const token = found[1] ?? found[2] ?? found[3] ?? ''
    tokens.push({ text: token === '**' ? '^' : token, at: tokenPattern.lastIndex - token.length })
  }
  return tokens
}

function spacesAt(text: string, from: number): number {
  return text.slice(from).length - text.slice(from).trimStart().length
}

/** Recursive descent, one method a level of precedence. */
class Reader {
  private index = 0
  private depth = 0
  private readonly tokens: readonly Token[]
  private readonly end: number

  constructor(tokens: readonly Token[], end: number) {
    this.tokens = tokens
    this.end = end
  }

  peek(): Token | undefined {
    return this.tokens[this.index]
  }

  sum(): ExpressionNode {
    return this.chain(['+', '-'], () => this.product())
  }

  private product(): ExpressionNode {
    return this.chain(['*', '/'], () => this.signed())
  }

  private chain(signs: readonly BinarySign[], next: () => ExpressionNode): ExpressionNode {
    let left = next()
    for (let sign = this.take(signs); sign !== undefined; sign = this.take(signs)) {
      left = { kind: 'binary', sign, left, right: next() }
    }
    return left
  }

  private signed(): ExpressionNode {
    const sign = this.take(['+', '-'])
    if (sign === undefined) return this.power()
    this.enter()
    const node = this.signed()
    this.depth--
    return sign === '-' ? { kind: 'negate', of: node } : node
  }

  private power(): ExpressionNode {
    const left = this.atom()
    if (this.take(['^']) === undefined) return left
    this.enter()
    const right = this.signed()
    this.depth--
    return { kind: 'binary', sign: '^', left, right }
  }

  private atom(): ExpressionNode {
    const token = this.peek()
    if (token === undefined) throw new ModelFault('unexpected', this.end)
    this.index++
    if (token.text === '(') return this.closed()
    if (/^[\d.]/.test(token.text)) return { kind: 'number', value: Number(token.text) }
    if (!/^[A-Za-z]/.test(token.text)) throw new ModelFault('unexpected', token.at)
    const isCall = this.peek()?.text === '('
    const call = expressionFunctions.find((one) => one === token.text)
    if (!isCall && call === undefined) return { kind: 'name', name: token.text }
    if (!isCall || call === undefined) throw new ModelFault('not-a-function', token.at)
    this.index++
    return { kind: 'call', call, of: this.closed() }
  }

  private closed(): ExpressionNode {
    this.enter()
    const node = this.sum()
    const token = this.peek()
    if (token?.text !== ')') throw new ModelFault('not-closed', token?.at ?? this.end)
    this.index++
    this.depth--
    return node
  }

  private take<T extends BinarySign>(signs: readonly T[]): T | undefined {
    const sign = signs.find((one) => one === this.peek()?.text)
    if (sign !== undefined) this.index++
    return sign
  }

  private enter(): void {
    this.depth++
    if (this.depth > deepest) throw new ModelFault('too-deep', this.peek()?.at ?? this.end)
  }
}
