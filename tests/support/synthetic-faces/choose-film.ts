import type { Draw } from './draw.ts'
import type { FaceRecipe, FilmRecipe } from './face-recipe.ts'

/** Camera and lamp: the harsher, the more uneven, noisy and soft. */
export function chooseFilm(draw: Draw, level: FaceRecipe['level']): FilmRecipe {
  const hard = { mild: 0.3, medium: 0.65, harsh: 1 }[level]
  const isGrey = draw.happens(0.12)
  const green = draw.between(0.6, 0.95)
  return {
    exposure: draw.between(0.5, 1),
    gradient: [hard * draw.between(-0.3, 0.3), hard * draw.between(-0.3, 0.3)],
    bowl: hard * draw.between(-0.15, 0.1),
    contrast: level === 'harsh' ? draw.between(0.15, 0.75) : draw.between(0.35, 0.8),
    contrastGradient: [hard * draw.between(-0.2, 0.2), hard * draw.between(-0.2, 0.2)],
    veil: draw.between(0.02, 0.25),
    blurPx: draw.between(0.5, 0.8 + 1.8 * hard),
    motionPx: draw.happens(0.3) ? draw.between(0, 2.5 * hard) : 0,
    motionAngle: draw.angle(),
    shotNoise: draw.between(0.002, 0.02 * hard),
    readNoise: draw.between(0.001, 0.012 * hard),
    gamma: draw.between(1 - 0.15 * hard, 1 + 0.15 * hard),
    shoulder: hard * draw.between(-0.25, 0.25),
    rgb: isGrey ? [1, 1, 1] : [1, green, draw.between(0.05, 0.15)],
    flicker: level === 'harsh' && draw.happens(0.3) ? draw.between(0.01, 0.06) : 0,
    localTone: level !== 'mild' && draw.happens(0.3) ? draw.between(0.05, 0.35 * hard) : 0,
    quality: draw.whole(level === 'harsh' ? 65 : 75, 95),
    orientation: draw.happens(0.25) ? draw.pick([3, 6, 8] as const) : 1,
  }
}
