import type { Draw } from './draw.ts'
import type { SceneRecipe } from './face-recipe.ts'

/** A bench, dark or light, plain or not; the rim of the optical flat in a third of the pictures. */
export function chooseScene(draw: Draw, radiusRatio: number): SceneRecipe {
  const isBody = draw.happens(0.35)
  const isRim = draw.happens(0.35)
  const rim = {
    radius: draw.between(1.25, 1.9),
    x: draw.between(-0.12, 0.12),
    y: draw.between(-0.12, 0.12),
    width: draw.between(0.02, 0.08),
    light: draw.between(0.1, 1.2),
  }
  const body = {
    outer: draw.between(1.05, 1.2),
    inner: radiusRatio * draw.between(0.8, 0.95),
    light: draw.between(0.15, 0.5),
  }
  return {
    bench: draw.pick(['plain', 'wood', 'cloth', 'plate'] as const),
    // A bright cloth under a dark ring is rare, but it comes.
    benchLight: draw.happens(0.15) ? draw.between(0.6, 1.1) : draw.between(0.03, 0.6),
    benchContrast: draw.between(0.03, 0.3),
    benchAngle: draw.angle(),
    boreLight: draw.between(0.04, 0.5),
    strayBands: draw.between(0, 0.08),
    chamferWidth: draw.between(0.002, 0.015),
    chamferLight: draw.between(0.12, 0.9),
    body: isBody ? body : null,
    flatRim: isRim ? rim : null,
  }
}
