import { expansionUmPerMK, faceExpansionPerK } from './expansion.ts'
import type { Input } from './fields.ts'
import { type Component, faceMaterials } from './seal.ts'

/** Fields that the form has and the machine interface has not. */
const formOnly = ['readingHalfWidthOther', 'readerSpread'] as const

/**
 * What the form says about its uncertainty, in the shape that parsing takes. A half width that was
 * typed goes before the one that was chosen; counts typed in one line become a list; a bow of
 * which nothing was typed was not stated. Of the ring's bow, diameter and expansion may stay empty:
 * they are then those of the face that was chosen.
 */
export function flatnessFormBudget(input: Input, components: readonly Component[]): Input {
  const { thermal, flatThermal, repeats, ...rest } = without(input, formOnly)
  const face = components.find((one) => String(one.id) === textOf(input, 'faceId'))
  const other = textOf(input, 'readingHalfWidthOther')
  return {
    ...rest,
    ...(other === '' ? {} : { readingHalfWidthBands: other }),
    ...(repeats === undefined ? {} : repeatList(repeats)),
    ...(isBowStated(thermal, ringFields) ? { thermal: withFace(thermal, face) } : {}),
    ...(isBowStated(flatThermal, flatFields) ? { flatThermal } : {}),
  }
}

const ringFields = ['deltaK', 'thicknessMm', 'diameterMm', 'expansionUmPerMK'] as const
/** The expansion of the flat is filled in beforehand: alone it states nothing. */
const flatFields = ['deltaK', 'thicknessMm', 'diameterMm'] as const

/** `2,0 2,25 2` and `2.0; 2.25; 2` alike. What is no text stays, to be refused by its name. */
function repeatList(repeats: unknown): Input {
  if (typeof repeats !== 'string') return { repeats }
  const counts = repeats.split(/[\s;]+/).filter((one) => one !== '')
  return counts.length === 0 ? {} : { repeats: counts.map((bands) => ({ bands })) }
}

function isBowStated(bow: unknown, names: readonly string[]): boolean {
  if (bow === undefined) return false
  return !isGroup(bow) || names.some((name) => textOf(bow, name) !== '')
}

function withFace(bow: unknown, face: Component | undefined): unknown {
  if (!isGroup(bow) || face === undefined) return bow
  const material = faceMaterials.find((one) => one === face.material)
  const perK = material === undefined ? null : faceExpansionPerK[material]
  return {
    ...bow,
    ...(textOf(bow, 'diameterMm') === '' && face.outerDiameterMm !== null
      ? { diameterMm: String(face.outerDiameterMm) }
      : {}),
    ...(textOf(bow, 'expansionUmPerMK') === '' && perK !== null
      ? { expansionUmPerMK: String(expansionUmPerMK(perK)) }
      : {}),
  }
}

function without(input: Input, names: readonly string[]): Input {
  return Object.fromEntries(Object.entries(input).filter(([name]) => !names.includes(name)))
}

function isGroup(value: unknown): value is Input {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function textOf(input: Input, name: string): string {
  const value = input[name]
  return typeof value === 'string' ? value.trim() : ''
}
