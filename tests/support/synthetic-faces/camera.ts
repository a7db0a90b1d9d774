import type { CameraRecipe } from './face-recipe.ts'

/** Places of the face in the picture and back. Pixels are whole at their middles, y down. */
export interface Camera {
  readonly toPixel: (x: number, y: number) => readonly [number, number]
  readonly toFace: (px: number, py: number) => readonly [number, number]
  /** Cosine of the angle between the normal and the ray to the camera. */
  readonly cosine: (x: number, y: number) => number
}

/**
 * A pinhole at `distance` radii from the middle of the face, `viewAngle` off its normal. Seen from
 * there the middle of the face lies at middleX, middleY and a radius across is radiusPx long.
 */
export function cameraOf(recipe: CameraRecipe): Camera {
  const { viewAngle, towards, roll, distance, radiusPx, middleX, middleY, distortion } = recipe
  const [ca, sa] = [Math.cos(viewAngle), Math.sin(viewAngle)]
  const [cb, sb] = [Math.cos(towards), Math.sin(towards)]
  const [cr, sr] = [Math.cos(roll), Math.sin(roll)]
  const eye = [distance * sa * cb, distance * sa * sb, distance * ca] as const
  // The picture's right and up, before it is rolled, as directions of the face.
  const right = [-sb, cb, 0] as const
  const up = [-ca * cb, -ca * sb, sa] as const
  const [fx, fy] = [recipe.width / 2, recipe.height / 2]
  const toPixel = (x: number, y: number) => {
    const depth = 1 - (x * sa * cb + y * sa * sb) / distance
    const u = (x * right[0] + y * right[1]) / depth
    const v = (x * up[0] + y * up[1]) / depth
    const px = middleX + radiusPx * (cr * u - sr * v)
    const py = middleY - radiusPx * (sr * u + cr * v)
    const off = 1 + (distortion * ((px - fx) ** 2 + (py - fy) ** 2)) / radiusPx ** 2
    return [fx + (px - fx) * off, fy + (py - fy) * off] as const
  }
  const toFace = (px: number, py: number) => {
    let [ux, uy] = [px - fx, py - fy]
    for (let round = 0; round < 4 && distortion !== 0; round++) {
      const off = 1 + (distortion * (ux * ux + uy * uy)) / radiusPx ** 2
      ux = (px - fx) / off
      uy = (py - fy) / off
    }
    const a = (ux + fx - middleX) / radiusPx
    const b = -(uy + fy - middleY) / radiusPx
    const u = cr * a + sr * b
    const v = -sr * a + cr * b
    // From the eye through the place u, v of the plane across the middle, down to the face.
    const dx = u * right[0] + v * up[0] - eye[0]
    const dy = u * right[1] + v * up[1] - eye[1]
    const dz = v * up[2] - eye[2]
    const along = -eye[2] / dz
    return [eye[0] + along * dx, eye[1] + along * dy] as const
  }
  const cosine = (x: number, y: number) => eye[2] / Math.hypot(eye[0] - x, eye[1] - y, eye[2])
  return { toPixel, toFace, cosine }
}
