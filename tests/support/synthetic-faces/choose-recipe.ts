import { chooseFilm } from './choose-film.ts'
import { chooseForm, formNames } from './choose-form.ts'
import { chooseMarks } from './choose-marks.ts'
import { chooseScene } from './choose-scene.ts'
import { chooseView } from './choose-view.ts'
import { type Draw, drawFrom } from './draw.ts'
import type { Category, FaceRecipe, FormPart } from './face-recipe.ts'
import { formHeight } from './form-height.ts'
import { refusedRecipe } from './refused-recipe.ts'

interface Wish {
  readonly level: FaceRecipe['level']
  readonly bands: number
  readonly flatness: number
  readonly mostViewDeg: number
}

function wishOf(category: Category, draw: Draw): Wish {
  if (category === 'hard') {
    const bands = draw.between(4, 20)
    const level = draw.happens(0.8) ? 'harsh' : 'medium'
    return { level, bands, flatness: draw.even(0.15, Math.min(5, bands / 2)), mostViewDeg: 14 }
  }
  if (category === 'maybe') {
    const isClosed = draw.happens(0.5)
    const bands = isClosed ? draw.between(0, 1.5) : draw.between(2, 4)
    const flatness = isClosed ? draw.between(2, 4) : draw.even(0.1, 1)
    return { level: draw.pick(['mild', 'medium'] as const), bands, flatness, mostViewDeg: 10 }
  }
  const bands = category === 'refuse' ? draw.between(6, 12) : draw.between(5, 15)
  const level = category === 'refuse' ? 'mild' : draw.pick(['mild', 'medium'] as const)
  const flatness = draw.even(0.1, Math.min(category === 'refuse' ? 1 : 3, bands / 2))
  return { level, bands, flatness, mostViewDeg: 10 }
}

/** The gap at the middle so that the surfaces touch nowhere: a little air is left. */
function gapOf(
  parts: readonly FormPart[],
  radiusRatio: number,
  tilt: readonly [number, number],
  air: number,
): number {
  let least = Number.POSITIVE_INFINITY
  for (const r of [radiusRatio, (1 + radiusRatio) / 2, 1]) {
    for (let k = 0; k < 360; k++) {
      const x = r * Math.cos((k * Math.PI) / 180)
      const y = r * Math.sin((k * Math.PI) / 180)
      least = Math.min(least, tilt[0] * x + tilt[1] * y - formHeight(parts, radiusRatio, x, y))
    }
  }
  return air - least
}

/** Draws what one picture is computed from. `width` is that of the picture in pixels. */
export function chooseRecipe(seed: number, category: Category, width = 1200): FaceRecipe {
  const draw = drawFrom(seed)
  const wish = wishOf(category, draw)
  const radiusRatio = draw.between(0.6, 0.92)
  const form = category === 'maybe' && wish.bands < 1.5 ? 'sphere' : draw.pick(formNames)
  const parts = chooseForm(form, draw, { radiusRatio, flatness: wish.flatness })
  if (category === 'hard' && draw.happens(0.2)) {
    const angle = draw.angle()
    const r = (1 + radiusRatio) / 2
    const height = draw.between(-0.2, 0.2) * wish.flatness
    const place = { x: r * Math.cos(angle), y: r * Math.sin(angle) }
    parts.push({ kind: 'bump', height, ...place, size: draw.between(0.06, 0.15) })
  }
  const direction = draw.angle()
  const tilt = [
    (wish.bands / 2) * Math.cos(direction),
    (wish.bands / 2) * Math.sin(direction),
  ] as const
  const recipe: FaceRecipe = {
    seed,
    category,
    refusal: null,
    form,
    level: wish.level,
    radiusRatio,
    parts,
    tilt,
    gap: gapOf(parts, radiusRatio, tilt, draw.between(0.3, 3)),
    step: null,
    covered: null,
    white: null,
    camera: chooseView(draw, { width, mostViewDeg: wish.mostViewDeg }),
    scene: chooseScene(draw, radiusRatio),
    film: chooseFilm(draw, wish.level),
    ...chooseMarks(draw, wish.level, radiusRatio),
  }
  return category === 'refuse' ? refusedRecipe(recipe, draw) : recipe
}
