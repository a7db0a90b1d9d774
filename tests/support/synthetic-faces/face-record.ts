import { cameraOf } from './camera.ts'
import { drawFrom } from './draw.ts'
import type { FaceRecipe } from './face-recipe.ts'
import { type FormTruth, formTruth } from './face-truth.ts'
import { formHeight } from './form-height.ts'

type Place = readonly [number, number]

/** What is true of a picture, in the words of the public suite. */
export interface FaceRecord extends FormTruth {
  readonly category: FaceRecipe['category']
  readonly expect: 'answer' | 'refuse' | 'either'
  readonly why: string
  readonly kind: string
  readonly level: string
  readonly eps: number
  readonly tiltBandsOverOD: number
  readonly viewAngleDeg: number
  readonly cameraDistanceInOD: number
  readonly outerRing: readonly Place[]
  readonly innerRing: readonly Place[]
  /** Pixels of the picture, y down, a radius of the face long. */
  readonly gapOpensTowardsImageDir: Place
  /** Places set by hand, off by 0.6 % of the radius. */
  readonly clicks: { readonly outer: readonly Place[]; readonly inner: readonly Place[] }
}

const clickNoise = 0.006
const clickCount = 8

/** Places on an edge as somebody sets them, around it in uneven steps. */
function clicksOn(recipe: FaceRecipe, radius: number, seed: number): Place[] {
  const camera = cameraOf(recipe.camera)
  const draw = drawFrom(seed)
  const isWrong = recipe.refusal === 'wrong-circles'
  const [offX, scale] = isWrong ? [0.18, 0.84] : [0, 1]
  return Array.from({ length: clickCount }, (_, i) => {
    const angle = (2 * Math.PI * (i + draw.between(-0.3, 0.3))) / clickCount
    const r = radius * scale
    const [px, py] = camera.toPixel(r * Math.cos(angle) + offX, r * Math.sin(angle))
    const noise = clickNoise * recipe.camera.radiusPx
    return [px + noise * draw.normal(), py + noise * draw.normal()]
  })
}

const expectOf = ({ category, refusal }: FaceRecipe): FaceRecord['expect'] => {
  if (category === 'maybe' || refusal === 'low-contrast') return 'either'
  return category === 'refuse' ? 'refuse' : 'answer'
}

/** Writes down what is true of the picture of a recipe. */
export function faceRecord(recipe: FaceRecipe): FaceRecord {
  const { radiusRatio, parts, tilt, camera: view } = recipe
  const camera = cameraOf(view)
  const ring = (radius: number) =>
    Array.from({ length: 72 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 72
      return camera.toPixel(radius * Math.cos(angle), radius * Math.sin(angle))
    })
  const steepness = Math.hypot(...tilt)
  const [mx, my] = camera.toPixel(0, 0)
  const [ox, oy] = camera.toPixel(tilt[0] / steepness, tilt[1] / steepness)
  return {
    ...formTruth(radiusRatio, (x, y) => formHeight(parts, radiusRatio, x, y)),
    category: recipe.category,
    expect: expectOf(recipe),
    why: recipe.refusal ?? '',
    kind: recipe.form,
    level: recipe.level,
    eps: radiusRatio,
    tiltBandsOverOD: 2 * steepness,
    viewAngleDeg: (view.viewAngle * 180) / Math.PI,
    cameraDistanceInOD: view.distance / 2,
    outerRing: ring(1),
    innerRing: ring(radiusRatio),
    gapOpensTowardsImageDir: [ox - mx, oy - my],
    clicks: {
      outer: clicksOn(recipe, 1, recipe.seed + 11),
      inner: clicksOn(recipe, radiusRatio, recipe.seed + 12),
    },
  }
}
