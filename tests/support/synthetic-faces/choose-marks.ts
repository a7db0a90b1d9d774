import type { Draw } from './draw.ts'
import type { FaceRecipe } from './face-recipe.ts'

type Marks = Pick<
  FaceRecipe,
  'glare' | 'smears' | 'dust' | 'chips' | 'scratches' | 'phone' | 'ghost'
>

/** Glare, smears, dust, scratches and chips on the land; none of them is form. */
export function chooseMarks(draw: Draw, level: FaceRecipe['level'], radiusRatio: number): Marks {
  const onLand = () => {
    const angle = draw.angle()
    const r = draw.between(radiusRatio, 1)
    return { x: r * Math.cos(angle), y: r * Math.sin(angle) }
  }
  const [glareMost, dustMost, scratchMost] = {
    mild: [0, 10, 2],
    medium: [1, 14, 6],
    harsh: [3, 20, 9],
  }[level] as [number, number, number]
  const isHarsh = level === 'harsh'
  return {
    glare: draw.times(draw.whole(0, glareMost), () => ({
      ...onLand(),
      size: draw.between(0.05, 0.14),
      strength: draw.between(0.4, 1.5),
    })),
    smears: draw.times(draw.whole(0, isHarsh ? 3 : 1), () => ({
      ...onLand(),
      size: draw.between(0.2, 0.6),
      strength: draw.between(0, isHarsh ? 0.5 : 0.3),
    })),
    dust: draw.times(draw.whole(0, dustMost), () => ({
      ...onLand(),
      size: draw.between(0.003, 0.016),
      strength: draw.between(-0.8, 0.3),
    })),
    chips: draw.times(level !== 'mild' && draw.happens(0.2) ? 1 : 0, () => {
      const angle = draw.angle()
      return { x: Math.cos(angle), y: Math.sin(angle), size: draw.between(0.01, 0.03), strength: 1 }
    }),
    scratches: draw.times(draw.whole(0, scratchMost), () => ({
      ...onLand(),
      angle: draw.angle(),
      length: draw.between(0.1, 0.35),
      width: draw.between(0.001, 0.004),
      strength: draw.between(-0.5, 0.6),
    })),
    phone:
      isHarsh && draw.happens(0.25)
        ? { ...onLand(), angle: draw.angle(), strength: draw.between(0.1, 0.4) }
        : null,
    ghost:
      isHarsh && draw.happens(0.25)
        ? { strength: draw.between(0.02, 0.08), x: draw.between(-8, 8), y: draw.between(-8, 8) }
        : null,
  }
}
