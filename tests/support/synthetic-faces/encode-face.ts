import sharp from 'sharp'
import type { FaceRecipe } from './face-recipe.ts'

/** Degrees by which the bytes are turned so that the orientation turns them back. */
const turned = { 1: 0, 3: 180, 6: 270, 8: 90 } as const

/** A JPEG as a camera writes it: bytes as the sensor lay, an orientation in its EXIF. */
export async function encodeFace(pixels: Uint8Array, recipe: FaceRecipe): Promise<Buffer> {
  const { width, height } = recipe.camera
  const { quality, orientation } = recipe.film
  const raw = sharp(pixels, { raw: { width, height, channels: 3 } })
  return raw
    .rotate(turned[orientation])
    .withMetadata({ orientation })
    .jpeg({ quality, chromaSubsampling: '4:2:0' })
    .toBuffer()
}
