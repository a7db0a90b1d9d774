import type { FaceRecipe } from './face-recipe.ts'
import { formHeight } from './form-height.ts'

/** Gap in bands along the ray to the camera, at normal view where cosine is 1. */
export function gapBands(recipe: FaceRecipe, x: number, y: number, cosine: number): number {
  const { parts, radiusRatio, tilt, gap, step } = recipe
  let height = formHeight(parts, radiusRatio, x, y)
  if (step !== null) {
    const across = x * Math.cos(step.angle) + y * Math.sin(step.angle)
    if (across > step.offset) height += step.height
  }
  return (gap + tilt[0] * x + tilt[1] * y - height) * cosine
}

function scratched(recipe: FaceRecipe, x: number, y: number): number {
  let light = 1
  for (const one of recipe.scratches) {
    const c = Math.cos(one.angle)
    const s = Math.sin(one.angle)
    const along = (x - one.x) * c + (y - one.y) * s
    const across = -(x - one.x) * s + (y - one.y) * c
    if (Math.abs(along) < one.length / 2 && Math.abs(across) < 3 * one.width) {
      light += one.strength * Math.exp(-((across / one.width) ** 2))
    }
  }
  for (const one of recipe.dust) {
    const square = ((x - one.x) ** 2 + (y - one.y) ** 2) / one.size ** 2
    if (square < 6) light *= 1 + one.strength * Math.exp(-square)
  }
  return Math.max(0, light)
}

/**
 * Light of the land in red, green and blue, mean 1 without marks: dark where the surfaces touch.
 *
 * light = 1 - contrast cos(2 pi gap)
 */
export function landLight(
  recipe: FaceRecipe,
  x: number,
  y: number,
  cosine: number,
): readonly [number, number, number] {
  const { film, white, chips, smears, phone, covered, ghost } = recipe
  const angle = Math.atan2(y, x)
  if (covered !== null) {
    const from = Math.abs(((angle - covered.angle + 9 * Math.PI) % (2 * Math.PI)) - Math.PI)
    if (from < covered.half) return [0.3, 0.3, 0.3]
  }
  let gap = gapBands(recipe, x, y, cosine)
  for (const chip of chips) {
    const square = ((x - chip.x) ** 2 + (y - chip.y) ** 2) / chip.size ** 2
    if (square < 1) gap += 3 * (1 - square)
  }
  let contrast = film.contrast * (1 + film.contrastGradient[0] * x + film.contrastGradient[1] * y)
  for (const smear of smears) {
    const square = ((x - smear.x) ** 2 + (y - smear.y) ** 2) / smear.size ** 2
    contrast *= 1 - smear.strength * Math.exp(-square)
  }
  let light = scratched(recipe, x, y)
  if (chips.some((chip) => Math.hypot(x - chip.x, y - chip.y) < chip.size)) light *= 0.5
  if (phone !== null) {
    const u = (x - phone.x) * Math.cos(phone.angle) + (y - phone.y) * Math.sin(phone.angle)
    const v = -(x - phone.x) * Math.sin(phone.angle) + (y - phone.y) * Math.cos(phone.angle)
    const inside = Math.max(Math.abs(u) / 0.25, Math.abs(v) / 0.5)
    light *= 1 - phone.strength / (1 + Math.exp(25 * (inside - 1)))
  }
  const second =
    ghost === null ? 0 : ghost.strength * Math.cos(2 * Math.PI * (ghost.x * x + ghost.y * y))
  const of = (order: number) => {
    const fade = white === null ? 1 : Math.exp(-((gap / white.fade) ** 2))
    return light * (1 - fade * contrast * Math.cos(2 * Math.PI * gap * order)) * (1 + second)
  }
  if (white === null) {
    const value = of(1)
    return [value, value, value]
  }
  return [of(white.orders[0]), of(white.orders[1]), of(white.orders[2])]
}
