import type { FormPart } from './face-recipe.ts'

/** Height of one part at a place of the land, bands. */
function partHeight(part: FormPart, radiusRatio: number, x: number, y: number): number {
  const r = Math.hypot(x, y)
  switch (part.kind) {
    case 'sphere':
      return -part.height * r * r
    case 'cone':
      return -part.height * r
    case 'crown': {
      const t = (2 * r - 1 - radiusRatio) / (1 - radiusRatio)
      return -part.height * t * t
    }
    case 'cylinder':
      return -part.height * (x * Math.cos(part.angle) + y * Math.sin(part.angle)) ** 2
    case 'lobes':
      return part.height * r ** part.count * Math.cos(part.count * (Math.atan2(y, x) - part.angle))
    case 'fall': {
      const from = part.at === 'outer' ? 1 - r : r - radiusRatio
      return -part.height * Math.exp(-from / part.width)
    }
    case 'bump':
      return part.height * Math.exp(-((x - part.x) ** 2 + (y - part.y) ** 2) / part.size ** 2)
  }
}

/** Height of a land in bands, + is material high, at a place in units of the outer radius. */
export function formHeight(
  parts: readonly FormPart[],
  radiusRatio: number,
  x: number,
  y: number,
): number {
  let sum = 0
  for (const part of parts) sum += partHeight(part, radiusRatio, x, y)
  return sum
}
