import type { FlatnessReading } from './flatness.ts'
import type { WholeFace } from './whole-face.ts'

export const faceFigures = [
  'flatness',
  'minimum-zone',
  'rms',
  'taper',
  'two-waves',
  'three-waves',
] as const
export type FaceFigureName = (typeof faceFigures)[number]

/** One figure of two readings and how it changed, in um; null where it is not known. */
export type FaceFigureChange = {
  readonly name: FaceFigureName
  readonly firstUm: number | null
  readonly secondUm: number | null
  /** Second less first. */
  readonly changeUm: number | null
  /** Expanded, of the first, the second and the change: flatness alone has a budget. */
  readonly expandedUm: readonly [number, number, number] | null
}

type Read = Pick<FlatnessReading, 'flatnessUm' | 'uncertainty'> & { readonly wholeFace: WholeFace }

/** The figures of two readings of whole faces side by side; waves by their amplitude. */
export function faceFigureChanges(first: Read, second: Read): readonly FaceFigureChange[] {
  return faceFigures.map((name) => {
    const [firstUm, secondUm] = [figureOf(first, name), figureOf(second, name)]
    const changeUm = firstUm === null || secondUm === null ? null : secondUm - firstUm
    const expandedUm = name === 'flatness' ? expandedOf(first, second) : null
    return { name, firstUm, secondUm, changeUm, expandedUm }
  })
}

function figureOf({ flatnessUm, wholeFace }: Read, name: FaceFigureName): number | null {
  const wave = (order: number) =>
    wholeFace.lobes.find((one) => one.order === order)?.amplitudeUm ?? null
  return {
    flatness: flatnessUm,
    'minimum-zone': wholeFace.minimumZoneUm,
    rms: wholeFace.rmsUm,
    taper: wholeFace.taperUm,
    'two-waves': wave(2),
    'three-waves': wave(3),
  }[name]
}

function expandedOf(first: Read, second: Read): FaceFigureChange['expandedUm'] {
  if (first.uncertainty === null || second.uncertainty === null) return null
  const [one, other] = [
    first.uncertainty.expandedUncertainty,
    second.uncertainty.expandedUncertainty,
  ]
  return [one, other, Math.hypot(one, other)]
}
