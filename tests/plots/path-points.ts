/** Every coordinate of path data, in order; arcs give their end points and radii only. */
export function coordinates(d: string): readonly number[] {
  const values: number[] = []
  for (const [, letter, rest] of d.matchAll(/([MLQCAZ])([^MLQCAZ]*)/g)) {
    const numbers = (rest ?? '')
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number)
    if (letter === 'A') values.push(...numbers.slice(0, 2), ...numbers.slice(5))
    else values.push(...numbers)
  }
  return values
}

/** The outlines of path data made of M, L and Z. */
export function subpaths(d: string): readonly (readonly { x: number; y: number }[])[] {
  return d
    .split('Z')
    .filter((part) => part !== '')
    .map((part) =>
      part
        .replace('M', '')
        .split('L')
        .map((pair) => {
          const [x = Number.NaN, y = Number.NaN] = pair.split(' ').map(Number)
          return { x, y }
        }),
    )
}
