import { faceExpansionPerK } from './expansion.ts'
import { type Component, faceMaterials } from './seal.ts'

/** The usual expansion of the material of a face; null where there is none to name. */
export function expansionOf(
  components: readonly Component[],
  componentId: number | null,
): number | null {
  const component = components.find((one) => one.id === componentId)
  const material = faceMaterials.find((one) => one === component?.material)
  return material === undefined ? null : faceExpansionPerK[material]
}
