import type { FaceRecipe, FormPart } from './face-recipe.ts'

function turned(part: FormPart, angle: number): FormPart {
  if ('angle' in part) return { ...part, angle: part.angle + angle }
  if (part.kind !== 'bump') return part
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  return { ...part, x: c * part.x - s * part.y, y: s * part.x + c * part.y }
}

/** The part turned about its middle, counter-clockwise; lamp, flat and camera stay as they are. */
export function turnedRecipe(recipe: FaceRecipe, turnDeg: number): FaceRecipe {
  const angle = (turnDeg * Math.PI) / 180
  return { ...recipe, parts: recipe.parts.map((part) => turned(part, angle)) }
}
