import { chooseRecipe } from '../../support/synthetic-faces/choose-recipe.ts'
import { developLight } from '../../support/synthetic-faces/develop-light.ts'
import { encodeFace } from '../../support/synthetic-faces/encode-face.ts'
import { faceRecord } from '../../support/synthetic-faces/face-record.ts'
import { paintLight } from '../../support/synthetic-faces/paint-light.ts'
import type { PhotoVariant } from './photo-variants.ts'

/** The picture of a seed with the camera turned about its axis, by 20 degrees to 340. */
export async function rolledPhoto(seed: number): Promise<PhotoVariant> {
  const recipe = chooseRecipe(seed, 'core')
  const rollDeg = 20 + ((seed * 47) % 321)
  const roll = recipe.camera.roll + (rollDeg * Math.PI) / 180
  const rolled = { ...recipe, camera: { ...recipe.camera, roll } }
  const jpeg = await encodeFace(developLight(paintLight(rolled), rolled), rolled)
  return { of: 'camera rolled', jpeg, clicks: faceRecord(rolled).clicks }
}
