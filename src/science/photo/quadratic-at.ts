/** The six terms of a quadratic over the unit disc. */
export const quadraticCount = 6

/**
 * Writes the terms of a quadratic over the unit disc at one place.
 *
 * 1, x, y, x^2 + y^2 - 3/4, x^2 - y^2, 2 x y
 *
 * @param x,y in units of the outer radius
 * @param into where to write, 6 numbers
 * @param at the first place to write to
 * @returns into
 * Source: common practice, no source; 3/4 keeps the square nearly apart from the constant on lands.
 * @example quadraticAt(0.5, 1, [], 0)[3] // 0.5
 */
export function quadraticAt<T extends { [index: number]: number }>(
  x: number,
  y: number,
  into: T,
  at: number,
): T {
  into[at] = 1
  into[at + 1] = x
  into[at + 2] = y
  into[at + 3] = x * x + y * y - 0.75
  into[at + 4] = x * x - y * y
  into[at + 5] = 2 * x * y
  return into
}
