import { beforeAll, describe, expect, it } from 'vitest'
import type { PhotoReading } from '../../../src/science/photo/photo-reading.ts'
import {
  alignSurfaces,
  type SurfaceAlignment,
} from '../../../src/science/surface/align-surfaces.ts'
import type { AnnularSurface } from '../../../src/science/surface/annular-surface.ts'
import { combineSurfaces } from '../../../src/science/surface/combine-surfaces.ts'
import { surfaceMap } from '../../../src/science/surface/surface-map.ts'
import { turnSurface } from '../../../src/science/surface/turn-surface.ts'
import { withoutPlane } from '../../../src/science/surface/without-plane.ts'
import { chooseRecipe } from '../../support/synthetic-faces/choose-recipe.ts'
import type { FaceRecipe } from '../../support/synthetic-faces/face-recipe.ts'
import { formHeight } from '../../support/synthetic-faces/form-height.ts'
import { readRecipe } from '../../support/synthetic-faces/read-recipe.ts'
import { turnedRecipe } from '../../support/synthetic-faces/turned-recipe.ts'

const size = { ringCount: 21, angleCount: 90 }

async function read(recipe: FaceRecipe): Promise<PhotoReading> {
  const answer = await readRecipe(recipe)
  if (answer.kind === 'refused') throw new Error(`${recipe.seed}: ${answer.reason}`)
  return answer
}

/** Root mean square of read less true height over the land, whichever way up it was read. */
function rmsError(surface: AnnularSurface, recipe: FaceRecipe): number {
  const { radii, anglesDeg, heights } = surfaceMap(surface, size)
  const off = (sign: number) => {
    const left = heights.map((row, i) =>
      row.map((height, j) => {
        const [r, angle] = [radii[i] as number, ((anglesDeg[j] as number) * Math.PI) / 180]
        const [x, y] = [r * Math.cos(angle), r * Math.sin(angle)]
        return sign * height - formHeight(recipe.parts, recipe.radiusRatio, x, y)
      }),
    )
    const all = withoutPlane({ radii, anglesDeg, heights: left }).map.heights.flat()
    return Math.sqrt(all.reduce((sum, h) => sum + h * h, 0) / all.length)
  }
  return Math.min(off(1), off(-1))
}

interface Pair {
  readonly turnDeg: number
  readonly alignment: SurfaceAlignment
  readonly apartErrors: readonly [number, number]
  readonly togetherError: number
}

async function pairOf(seed: number, turnDeg: number): Promise<Pair> {
  const recipe = chooseRecipe(seed, 'core', 850)
  const other = turnedRecipe(recipe, turnDeg)
  // Another lamp, dust and glare: what they do to the reading doesn't turn with the part.
  const { film, glare, dust, smears } = chooseRecipe(seed + 5000, 'core', 850)
  const first = await read(recipe)
  const second = await read({ ...other, film, glare, dust, smears, seed: seed + 5000 })
  const alignment = alignSurfaces(first.surface, second.surface, { areSignsKnown: false })
  const back = turnSurface(second.surface, alignment.turnDeg)
  const sign = alignment.isOpposite ? -1 : 1
  const onFirst = { ...back, coefficients: back.coefficients.map((one) => sign * one) }
  const weights = [first, second].map((one) => 1 / one.standardUncertaintyBands ** 2)
  return {
    turnDeg,
    alignment,
    apartErrors: [rmsError(first.surface, recipe), rmsError(second.surface, other)],
    togetherError: rmsError(combineSurfaces([first.surface, onFirst], weights), recipe),
  }
}

// Two photographs a pair, each computed and read in a second or two, longer beside other work.
describe('two photographs of one face that was turned', { timeout: 120_000 }, () => {
  const pairs: Pair[] = []
  beforeAll(async () => {
    // Seeds of forms that show where they are: mixed and wavy ones.
    for (const [seed, turnDeg] of [
      [72_001, 120],
      [72_021, 37],
      [72_023, 211],
    ] as const) {
      pairs.push(await pairOf(seed, turnDeg))
    }
  }, 240_000)

  it('lie on each other after the turn that is found', () => {
    expect(pairs).toHaveLength(3)
    for (const { turnDeg, alignment } of pairs) {
      const off = Math.abs(((alignment.turnDeg + turnDeg + 180) % 360) - 180)
      // A degree is what errors of 0.01 band do to lobes of half a band.
      expect(off).toBeLessThan(1)
      expect(alignment.likeness).toBeGreaterThan(0.99)
      expect(alignment.rivalLikeness).toBeLessThan(alignment.likeness)
    }
  })

  it('are never worse together than the worse of them, and better on the whole', () => {
    const mean = (of: (pair: Pair) => number) => pairs.reduce((sum, one) => sum + of(one) / 3, 0)
    for (const { apartErrors, togetherError } of pairs) {
      expect(togetherError).toBeLessThan(Math.max(...apartErrors))
    }
    const apart = mean(({ apartErrors: [first, second] }) => (first + second) / 2)
    expect(mean((one) => one.togetherError)).toBeLessThan(apart)
  })
})
