import type { Figure } from './certified-results.ts'
import { figure } from './figure.ts'

/**
 * A number with the decimals that its text was typed with: `9,0` is printed 9.0, since its last
 * digit says how well it was read. Without a text, as older records are, as it is.
 */
export function typedFigure(value: number, typed: string | undefined): Figure {
  const decimals = typed === undefined || typed === '' ? null : decimalsOf(typed)
  return figure(value, decimals === null || decimals > 20 ? 'as-entered' : { decimals })
}

function decimalsOf(typed: string): number {
  const [, after = ''] = typed.trim().split(/[.,]/)
  return after.length
}
