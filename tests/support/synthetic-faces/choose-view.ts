import type { Draw } from './draw.ts'
import type { CameraRecipe } from './face-recipe.ts'

/** Where the camera stands: near square-on and far away, the whole ring in the picture. */
export function chooseView(
  draw: Draw,
  wanted: { readonly width: number; readonly mostViewDeg: number },
): CameraRecipe {
  const { width, mostViewDeg } = wanted
  const height = Math.round(width * 0.75)
  const radiusPx = height * draw.between(0.31, 0.45)
  const spare = (length: number) => Math.max(0, length / 2 - 1.06 * radiusPx)
  return {
    width,
    height,
    viewAngle: (draw.between(0, mostViewDeg) * Math.PI) / 180,
    towards: draw.angle(),
    roll: draw.angle(),
    distance: draw.between(16, 40),
    radiusPx,
    middleX: width / 2 + draw.between(-0.7, 0.7) * spare(width),
    middleY: height / 2 + draw.between(-0.7, 0.7) * spare(height),
    distortion: draw.between(-0.002, 0.002),
  }
}
