import type { ExpressionFunction, ExpressionNode } from './expression-node.ts'
import { ModelFault } from './model-fault.ts'

/** How many trials are computed at a time: small enough to stay in the processor's cache. */
export const blockLength = 2048

/** Fills the block it returns anew at each call, from the blocks of its names. */
export type BlockEvaluator = () => Float64Array

/**
 * Makes a function that computes an expression for a block of trials at a time: no work is spent
 * on reading the tree trial by trial, and no memory is taken while it runs.
 *
 * @param node a parsed expression
 * @param blocks for each name the block that its trials are drawn into, of blockLength
 * @returns the function; call it after each filling of the blocks
 * @throws ModelFault unknown-name where a name has no block
 * Source: own code.
 * @example blockEvaluator({ kind: 'number', value: 6 }, new Map())()[0] // 6
 */
export function blockEvaluator(
  node: ExpressionNode,
  blocks: ReadonlyMap<string, Float64Array>,
): BlockEvaluator {
  if (node.kind === 'name') {
    const block = blocks.get(node.name)
    if (block === undefined) throw new ModelFault('unknown-name', 0)
    return () => block
  }
  const out = new Float64Array(blockLength)
  if (node.kind === 'number') {
    out.fill(node.value)
    return () => out
  }
  if (node.kind === 'negate') {
    return fill(out, blockEvaluator(node.of, blocks), (x) => -x)
  }
  if (node.kind === 'call') {
    return fill(out, blockEvaluator(node.of, blocks), functions[node.call])
  }
  const left = blockEvaluator(node.left, blocks)
  if (node.sign === '^' && node.right.kind === 'number' && node.right.value === 2) {
    return fill(out, left, (x) => x * x)
  }
  return binary[node.sign](out, left, blockEvaluator(node.right, blocks))
}

const functions: Readonly<Record<ExpressionFunction, (x: number) => number>> = {
  sqrt: Math.sqrt,
  exp: Math.exp,
  log: Math.log,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
}

function fill(out: Float64Array, of: BlockEvaluator, map: (x: number) => number): BlockEvaluator {
  return () => {
    const x = of()
    for (let i = 0; i < blockLength; i++) out[i] = map(x[i] as number)
    return out
  }
}

type Pairwise = (out: Float64Array, left: BlockEvaluator, right: BlockEvaluator) => BlockEvaluator

/** Written out one by one: a shared loop that calls a function for each pair is slower. */
const binary: Readonly<Record<'+' | '-' | '*' | '/' | '^', Pairwise>> = {
  '+': (out, left, right) => () => {
    const [a, b] = [left(), right()]
    for (let i = 0; i < blockLength; i++) out[i] = (a[i] as number) + (b[i] as number)
    return out
  },
  '-': (out, left, right) => () => {
    const [a, b] = [left(), right()]
    for (let i = 0; i < blockLength; i++) out[i] = (a[i] as number) - (b[i] as number)
    return out
  },
  '*': (out, left, right) => () => {
    const [a, b] = [left(), right()]
    for (let i = 0; i < blockLength; i++) out[i] = (a[i] as number) * (b[i] as number)
    return out
  },
  '/': (out, left, right) => () => {
    const [a, b] = [left(), right()]
    for (let i = 0; i < blockLength; i++) out[i] = (a[i] as number) / (b[i] as number)
    return out
  },
  '^': (out, left, right) => () => {
    const [a, b] = [left(), right()]
    for (let i = 0; i < blockLength; i++) out[i] = (a[i] as number) ** (b[i] as number)
    return out
  },
}
