import type { BenchTyped } from './bench-fields.tsx'

/**
 * How many rows of a list a form shows: as many as hold something and one more, so that a record
 * with many keeps them all when it is corrected.
 * @param list its name, as in `loads[0].lengthMm`
 * @param count at least so many, and at most what a record takes
 */
export function rowsShown(
  { values }: Pick<BenchTyped, 'values'>,
  list: string,
  count: { readonly least: number; readonly most: number },
): number {
  const used = Object.entries(values).flatMap(([name, value]) => {
    const [, of, index] = /^(\w+)\[(\d+)\]/.exec(name) ?? []
    return of === list && value !== '' ? [Number(index)] : []
  })
  return Math.min(Math.max(count.least, ...used.map((index) => index + 2)), count.most)
}
