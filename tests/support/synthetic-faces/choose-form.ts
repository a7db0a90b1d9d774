import type { Draw } from './draw.ts'
import type { FormPart } from './face-recipe.ts'
import { formTruth } from './face-truth.ts'
import { formHeight } from './form-height.ts'

export const formNames = [
  'sphere',
  'cone',
  'cylinder',
  'saddle',
  'tri-lobe',
  'roll-off',
  'wavy',
  'crown',
  'mixed',
] as const

export type FormName = (typeof formNames)[number]

const lobes = (draw: Draw, count: number, height: number): FormPart => ({
  kind: 'lobes',
  count,
  height,
  angle: draw.angle(),
})

/** The parts of a form before they are scaled: 1 stands for the largest. */
function partsOf(name: FormName, draw: Draw): FormPart[] {
  const sign = draw.happens(0.5) ? 1 : -1
  switch (name) {
    case 'sphere':
    case 'cone':
      return [{ kind: name, height: sign }]
    case 'crown':
      return [
        { kind: 'crown', height: sign },
        { kind: 'sphere', height: draw.between(-0.4, 0.4) },
      ]
    case 'cylinder':
      return [{ kind: 'cylinder', height: sign, angle: draw.angle() }]
    case 'saddle':
      return [lobes(draw, 2, 1)]
    case 'tri-lobe':
      return [lobes(draw, 3, 1)]
    case 'roll-off':
      return [
        { kind: 'fall', at: 'outer', height: 1, width: draw.between(0.06, 0.14) },
        {
          kind: 'fall',
          at: 'inner',
          height: draw.between(0, 0.5),
          width: draw.between(0.06, 0.14),
        },
      ]
    case 'wavy':
      return [2, 3, 4, 5].map((n) => lobes(draw, n, draw.between(0.1, 1) / (n - 1)))
    case 'mixed':
      return [
        { kind: 'sphere', height: draw.between(-1, 1) },
        { kind: 'cone', height: draw.between(-0.5, 0.5) },
        lobes(draw, 2, draw.between(0.1, 0.7)),
        lobes(draw, 3, draw.between(0.05, 0.3)),
      ]
  }
}

/** A form of the name, scaled to a flatness (least squares) in bands. */
export function chooseForm(
  name: FormName,
  draw: Draw,
  wanted: { readonly radiusRatio: number; readonly flatness: number },
): FormPart[] {
  const { radiusRatio, flatness } = wanted
  const parts = partsOf(name, draw)
  const { pvLS } = formTruth(radiusRatio, (x, y) => formHeight(parts, radiusRatio, x, y))
  return parts.map((part) => ({ ...part, height: (part.height * flatness) / pvLS }))
}
