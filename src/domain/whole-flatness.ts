import type { AnnularSurface } from '../science/surface/annular-surface.ts'
import type { FlatnessForm } from '../science/surface/flatness-pattern.ts'
import { formOfMap } from '../science/surface/form-of-map.ts'
import { surfaceFigures } from '../science/surface/surface-figures.ts'
import { surfaceMap } from '../science/surface/surface-map.ts'
import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import { expandedResult } from '../science/uncertainty/expanded-result.ts'

/** Figures of a whole face in um, with the map that all of them belong to. */
export type WholeFlatness = {
  readonly flatnessUm: number
  readonly flatnessMinimumZoneUm: number
  readonly rmsUm: number
  /** Outer edge less inner edge; null where nobody could tell which way the gap grows. */
  readonly taperUm: number | null
  readonly form: FlatnessForm | 'undetermined'
  readonly lobes: readonly {
    readonly order: number
    readonly amplitudeUm: number
    readonly phaseDeg: number
  }[]
  /** Upside down, perhaps, where the sign is not determined. */
  readonly map: {
    readonly radii: readonly number[]
    readonly anglesDeg: readonly number[]
    readonly heightsUm: readonly (readonly number[])[]
  }
  readonly standardUncertaintyUm: number
  readonly expandedUncertaintyUm: number
  readonly coverageFactor: number
  readonly effectiveDegreesOfFreedom: number | null
  readonly budget: readonly BudgetLine[]
}

const size = { ringCount: 17, angleCount: 180 } as const

/**
 * Works out what is said of a face from its stored surface.
 * @param read surface: in bands; bandHeightUm; outerDiameterMm; isSignKnown: false where the map
 *   may be upside down; budgetOf: the lines for a flatness in um
 */
export function wholeFlatness(read: {
  readonly surface: AnnularSurface
  readonly isSignKnown: boolean
  readonly bandHeightUm: number
  readonly outerDiameterMm: number
  readonly budgetOf: (flatnessUm: number) => readonly BudgetLine[]
}): WholeFlatness {
  const { surface, isSignKnown, bandHeightUm, outerDiameterMm, budgetOf } = read
  const inUm = { ...surface, coefficients: surface.coefficients.map((one) => one * bandHeightUm) }
  const figures = surfaceFigures(surfaceMap(inUm, size))
  const budget = budgetOf(figures.peakToValley)
  const { standardUncertainty, expandedUncertainty, ...how } = expandedResult(budget)
  const { map } = figures
  return {
    flatnessUm: figures.peakToValley,
    flatnessMinimumZoneUm: figures.minimumZone,
    rmsUm: figures.rms,
    taperUm: isSignKnown ? figures.taper : null,
    form: formOf(formOfMap(map, expandedUncertainty), isSignKnown),
    lobes: figures.lobes.map(({ order, amplitude, phaseDeg }) => {
      return { order, amplitudeUm: amplitude, phaseDeg }
    }),
    map: {
      radii: map.radii.map((one) => (one * outerDiameterMm) / 2),
      anglesDeg: map.anglesDeg,
      heightsUm: map.heights,
    },
    standardUncertaintyUm: standardUncertainty,
    expandedUncertaintyUm: expandedUncertainty,
    ...how,
    budget,
  }
}

/** Which way up matters to convex and concave alone. */
function formOf(form: FlatnessForm, isSignKnown: boolean): WholeFlatness['form'] {
  return !isSignKnown && (form === 'convex' || form === 'concave') ? 'undetermined' : form
}
