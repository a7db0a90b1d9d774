import type { FaceMaterial } from './seal.ts'

/**
 * Linear expansion of materials of faces and flats, per kelvin, from memory: defaults that whoever
 * reads may change. Null where the makes differ too much to name one.
 */
export const faceExpansionPerK: Readonly<Record<FaceMaterial, number | null>> = {
  'carbon-graphite': 5e-6,
  'silicon-carbide-sintered': 4e-6,
  'silicon-carbide-reaction-bonded': 4e-6,
  'tungsten-carbide': 5e-6,
  alumina: 7e-6,
  'cobalt-chromium-hardfacing': null,
  'nickel-iron': null,
  other: null,
}

/** Of optical flats, from memory as well. */
export const flatExpansionPerK = { 'fused-silica': 0.55e-6, borosilicate: 3.3e-6 } as const

/**
 * The unit that people know these in: µm by metre and kelvin.
 * @param perK per kelvin; a short decimal comes out as one: 4e-6 as 4, not 4.000000000000001
 */
export function expansionUmPerMK(perK: number): number {
  return Number((perK * 1e6).toPrecision(12))
}
