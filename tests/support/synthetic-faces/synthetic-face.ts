import { chooseRecipe } from './choose-recipe.ts'
import { developLight } from './develop-light.ts'
import { encodeFace } from './encode-face.ts'
import type { Category, FaceRecipe } from './face-recipe.ts'
import { type FaceRecord, faceRecord } from './face-record.ts'
import { paintLight } from './paint-light.ts'

/** A picture and what is true of it. */
export interface SyntheticFace {
  readonly recipe: FaceRecipe
  readonly record: FaceRecord
  readonly jpeg: Buffer
}

/** Computes the photograph of an invented face: the same seed gives the same bytes. */
export async function syntheticFace(
  seed: number,
  category: Category,
  width = 1200,
): Promise<SyntheticFace> {
  const recipe = chooseRecipe(seed, category, width)
  const jpeg = await encodeFace(developLight(paintLight(recipe), recipe), recipe)
  return { recipe, record: faceRecord(recipe), jpeg }
}
