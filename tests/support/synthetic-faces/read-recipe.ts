import type { PhotoReading } from '../../../src/science/photo/photo-reading.ts'
import type { PhotoRefusal } from '../../../src/science/photo/photo-refusal.ts'
import { readPhoto } from '../../../src/science/photo/read-photo.ts'
import { decodePhoto } from '../../../src/workers/decode-photo.ts'
import { developLight } from './develop-light.ts'
import { encodeFace } from './encode-face.ts'
import type { FaceRecipe } from './face-recipe.ts'
import { faceRecord } from './face-record.ts'
import { paintLight } from './paint-light.ts'

/** Takes the photograph of a recipe, as a JPEG, and reads it by its clicks. */
export async function readRecipe(recipe: FaceRecipe): Promise<PhotoReading | PhotoRefusal> {
  const jpeg = await encodeFace(developLight(paintLight(recipe), recipe), recipe)
  const decoded = await decodePhoto(jpeg)
  if ('fault' in decoded) throw new Error(decoded.fault)
  const { clicks } = faceRecord(recipe)
  return readPhoto(decoded.picture, clicks)
}
