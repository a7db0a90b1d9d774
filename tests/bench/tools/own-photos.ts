import { chooseRecipe } from '../../support/synthetic-faces/choose-recipe.ts'
import type { Category } from '../../support/synthetic-faces/face-recipe.ts'
import { faceRecord } from '../../support/synthetic-faces/face-record.ts'
import { syntheticFace } from '../../support/synthetic-faces/synthetic-face.ts'
import type { PhotoCase } from './photo-case.ts'

/** Pictures of our own generator, by seeds in a row. */
export function ownPhotos(category: Category, firstSeed: number, count: number): PhotoCase[] {
  return Array.from({ length: count }, (_, i) => {
    const seed = firstSeed + i
    return {
      id: `${category}-${seed}`,
      ...faceRecord(chooseRecipe(seed, category)),
      jpeg: async () => (await syntheticFace(seed, category)).jpeg,
    }
  })
}
