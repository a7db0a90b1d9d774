import { roundPx } from './round-px.ts'

const stepPx = 5

/**
 * Slanted lines that fill a box, as path data; told apart from a filled and an empty box without
 * any colour.
 *
 * @param box left, top, width and height, px; a width of 0 gives no lines
 * @param slant rising or falling to the right
 * @returns path data of M and L, '' where there is no room
 * @throws RangeError when the box is not finite or its width is below 0
 * @example hatchPath({ x: 0, y: 0, width: 5, height: 5 }, 'rising') // M0 5L5 0
 */
export function hatchPath(
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  slant: 'rising' | 'falling',
): string {
  const { x: left, y: top, width, height } = box
  if (!(width >= 0 && height > 0 && Number.isFinite(left + top + width + height))) {
    throw new RangeError(`hatchPath requires width from 0, got ${width} by ${height}`)
  }
  const right = left + width
  const lines: string[] = []
  for (let foot = left - height + stepPx; foot < right; foot += stepPx) {
    const from = Math.max(left, foot)
    const to = Math.min(right, foot + height)
    if (to - from < 0.5) continue
    const rise = (x: number) => (slant === 'rising' ? top + height - (x - foot) : top + x - foot)
    lines.push(`M${roundPx(from)} ${roundPx(rise(from))}L${roundPx(to)} ${roundPx(rise(to))}`)
  }
  return lines.join('')
}
