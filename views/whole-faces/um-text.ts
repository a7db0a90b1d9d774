import { figure } from '../../src/domain/figure.ts'

/** A height in um on this page: to the nanometre, since differences are small. */
export function umText(um: number): string {
  return figure(um, { decimals: 3 }).text
}

/** A change, which says its sign either way. */
export function changeText(um: number): string {
  const text = umText(um)
  return um > 0 && Number(text) > 0 ? `+${text}` : text
}
