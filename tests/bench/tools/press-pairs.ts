import { chooseRecipe } from '../../support/synthetic-faces/choose-recipe.ts'
import { developLight } from '../../support/synthetic-faces/develop-light.ts'
import { encodeFace } from '../../support/synthetic-faces/encode-face.ts'
import type { FaceRecipe } from '../../support/synthetic-faces/face-recipe.ts'
import { faceRecord } from '../../support/synthetic-faces/face-record.ts'
import { paintLight } from '../../support/synthetic-faces/paint-light.ts'

/** Two photographs of one face, the second while the flat was pressed. */
export interface PressPair {
  readonly first: Uint8Array
  readonly second: Uint8Array
  readonly clicks: ReturnType<typeof faceRecord>['clicks']
  /** Direction in which the gap grows, degrees counter-clockwise from the right. */
  readonly opensTowardsDeg: number
}

/** Presses of a tenth to a third of a band, in steps that repeat. */
const presses = [0.1, 0.15, 0.2, 0.25, 0.3, 0.35] as const

const jpegOf = (recipe: FaceRecipe) => encodeFace(developLight(paintLight(recipe), recipe), recipe)

/** A pair by its seed; noise of the second picture is its own. */
export async function pressPair(seed: number): Promise<PressPair> {
  const recipe = chooseRecipe(seed, 'core')
  const press = presses[seed % presses.length] as number
  const { clicks, gapOpensTowardsImageDir: towards } = faceRecord(recipe)
  const pressed = { ...recipe, gap: recipe.gap - press, seed: recipe.seed + 5_000_000 }
  return {
    first: await jpegOf(recipe),
    second: await jpegOf(pressed),
    clicks,
    opensTowardsDeg: (Math.atan2(-towards[1], towards[0]) * 180) / Math.PI,
  }
}
