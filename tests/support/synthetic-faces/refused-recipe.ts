import type { Draw } from './draw.ts'
import { type FaceRecipe, type RefusalKind, refusalKinds } from './face-recipe.ts'

type Change = (recipe: FaceRecipe, draw: Draw) => Partial<FaceRecipe>

const tilted = (recipe: FaceRecipe, by: number) =>
  [recipe.tilt[0] * by, recipe.tilt[1] * by] as const

const bandsOver = (recipe: FaceRecipe) => 2 * Math.hypot(...recipe.tilt)

/** What is spoiled about an otherwise good picture, so that it has to be refused. */
const changes: Readonly<Record<RefusalKind, Change>> = {
  'no-bands': ({ film }, draw) => ({ film: { ...film, contrast: draw.between(0, 0.01) } }),
  'under-1.5-bands': (recipe, draw) => ({
    tilt: tilted(recipe, draw.between(0.05, 0.5) / bandsOver(recipe)),
    parts: recipe.parts.map((part) => ({ ...part, height: 0.3 * part.height })),
  }),
  // A third of a pixel a band: nothing of it is left in the picture, or something false.
  aliased: (recipe, draw) => ({
    tilt: tilted(recipe, (draw.between(1.1, 2.4) * 2 * recipe.camera.radiusPx) / bandsOver(recipe)),
  }),
  overexposed: ({ film }, draw) => ({ film: { ...film, exposure: draw.between(60, 90) } }),
  'out-of-focus': ({ film, camera }, draw) => ({
    film: { ...film, blurPx: camera.radiusPx * draw.between(0.12, 0.16) },
  }),
  'half-covered': (_, draw) => ({
    covered: { angle: draw.angle(), half: draw.between(1.1, 1.6) },
  }),
  'height-step': (_, draw) => ({
    step: {
      angle: draw.angle(),
      offset: draw.between(-0.25, 0.25),
      height: draw.between(0.3, 0.7) * draw.pick([1, -1]),
    },
  }),
  oblique: ({ camera }, draw) => ({
    camera: { ...camera, viewAngle: (draw.between(31, 48) * Math.PI) / 180 },
  }),
  'second-fringes': (_, draw) => {
    const angle = draw.angle()
    const bands = draw.between(6, 9)
    return {
      ghost: {
        strength: draw.between(0.45, 0.7),
        x: bands * Math.cos(angle),
        y: bands * Math.sin(angle),
      },
    }
  },
  'wrong-circles': () => ({}),
  'white-lamp': (_, draw) => ({
    white: { orders: [0.93, 1.08, 1.28], fade: draw.between(2.5, 4) },
  }),
  motion: (recipe, draw) => {
    const { camera, film, tilt } = recipe
    // Along the steepest gap in the picture, roughly: a band and a half or more.
    const direction = Math.atan2(tilt[1], tilt[0]) - camera.towards - Math.PI / 2 + camera.roll
    const pitchPx = (2 * camera.radiusPx) / bandsOver(recipe)
    const motionPx = Math.min(120, draw.between(1, 1.6) * pitchPx)
    return { film: { ...film, motionPx, motionAngle: -direction } }
  },
  'cut-by-frame': ({ camera }, draw) => ({
    camera: { ...camera, middleX: camera.radiusPx * draw.between(0.1, 0.6) },
  }),
  'low-contrast': ({ film }, draw) => ({
    film: { ...film, contrast: draw.between(0.02, 0.035), shotNoise: 0.03, readNoise: 0.02 },
  }),
}

/** Spoils a recipe; kinds follow the seed, so that 14 seeds in a row hold every one. */
export function refusedRecipe(recipe: FaceRecipe, draw: Draw): FaceRecipe {
  const refusal = refusalKinds[recipe.seed % refusalKinds.length] as RefusalKind
  return { ...recipe, refusal, ...changes[refusal](recipe, draw) }
}
