import type { LightSteps } from './light-steps.ts'

/** Pixels of the picture that one cell of the count is wide. */
const cell = 3
const mostEdges = 6000

/** Places where the slope is steeper than on both sides along its own direction. */
function ridges(
  steps: LightSteps,
): { x: number; y: number; dx: number; dy: number; size: number }[] {
  const { right, down, width, height, usual } = steps
  const found: { x: number; y: number; dx: number; dy: number; size: number }[] = []
  const size = (at: number) => Math.hypot(right[at] as number, down[at] as number)
  for (let y = 2; y < height - 2; y++) {
    for (let x = 2; x < width - 2; x++) {
      const at = y * width + x
      const here = size(at)
      if (here < 2 * usual || here < 1e-4) continue
      const dx = (right[at] as number) / here
      const dy = (down[at] as number) / here
      const next = Math.round(dy) * width + Math.round(dx)
      if (size(at + next) > here || size(at - next) >= here) continue
      found.push({ x, y, dx, dy, size: here })
    }
  }
  return found.sort((a, b) => b.size - a.size).slice(0, mostEdges)
}

/**
 * Finds places that many edges of a picture look at: middles of circles. Each edge counts for the
 * cells along the line of its slope, both ways; straight bands spread their counts over the picture,
 * the edges of a ring bring theirs to one place.
 *
 * @param steps slopes of brightness
 * @param count how many places at most
 * @returns places in pixels, the one with the highest count first
 * Source: count of lines through edge normals (P. V. C. Hough's principle, from memory).
 * @example likelyMiddles({ right: new Float32Array(9), down: new Float32Array(9), width: 3,
 *   height: 3, usual: 0, steep: 0 }, 2).length // 0
 */
export function likelyMiddles(steps: LightSteps, count: number): [number, number][] {
  const columns = Math.ceil(steps.width / cell)
  const rows = Math.ceil(steps.height / cell)
  const shorter = Math.min(steps.width, steps.height)
  const counts = new Float32Array(columns * rows)
  for (const { x, y, dx, dy } of ridges(steps)) {
    for (const sign of [1, -1]) {
      for (let r = 0.1 * shorter; r < 0.6 * shorter; r += cell) {
        const i = Math.round((x + sign * r * dx) / cell)
        const j = Math.round((y + sign * r * dy) / cell)
        // A line that has left the picture does not come back.
        if (i < 0 || j < 0 || i >= columns || j >= rows) break
        const at = j * columns + i
        counts[at] = (counts[at] as number) + 1
      }
    }
  }
  const around = (i: number, j: number) => {
    let sum = 0
    for (let b = -2; b <= 2; b++) {
      for (let a = -2; a <= 2; a++) {
        const inside = i + a >= 0 && i + a < columns && j + b >= 0 && j + b < rows
        if (inside) sum += (counts[(j + b) * columns + i + a] as number) / (1 + a * a + b * b)
      }
    }
    return sum
  }
  const highest = counts.reduce((a, b) => Math.max(a, b), 0)
  const peaks: { i: number; j: number; sum: number }[] = []
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      // Smaller counts than these are no rival of the highest.
      if ((counts[j * columns + i] as number) < highest / 8) continue
      const sum = around(i, j)
      if (sum > 0) peaks.push({ i, j, sum })
    }
  }
  peaks.sort((a, b) => b.sum - a.sum)
  const apart = (0.04 * shorter) / cell
  const chosen: typeof peaks = []
  for (const peak of peaks) {
    if (chosen.length === count) break
    if (chosen.every((one) => Math.hypot(one.i - peak.i, one.j - peak.j) > apart)) chosen.push(peak)
  }
  return chosen.map(({ i, j }) => [i * cell, j * cell])
}
