import type { Distribution } from '../../../src/science/uncertainty/distributions.ts'
import type {
  MeasurementModel,
  ModelQuantity,
} from '../../../src/science/uncertainty/measurement-model.ts'
import { readReference } from '../read-reference.ts'

export function quantity(
  name: string,
  value: number,
  standardUncertainty: number,
  distribution: Distribution = 'normal',
  degreesOfFreedom: number | null = null,
): ModelQuantity {
  return { name, value, standardUncertainty, distribution, degreesOfFreedom }
}

/** As a quantity is stated: its half width or its standard uncertainty. */
interface Stated {
  readonly name: string
  readonly value: number
  readonly distribution: Distribution
  readonly halfWidth?: number
  readonly standardUncertainty?: number
  readonly degreesOfFreedom?: number
}

type Pair = readonly [number, number]

/** A published example: what is printed, and what its printed inputs give with more digits. */
export interface Published<Printed, Recomputed> {
  readonly expression: string
  readonly probability: number
  readonly quantities: readonly Stated[]
  readonly printed: Printed
  readonly recomputed: Recomputed
}

interface Linear {
  readonly standardUncertainty: number
  readonly expandedUncertainty: number
  readonly coverageFactor: number
}

interface Trials {
  readonly mean: number
  readonly standardDeviation: number
  readonly shortestInterval: Pair
}

export const published = readReference<{
  readonly endGauge: Published<
    Linear & { readonly value: number; readonly degreesOfFreedom: number },
    Linear & {
      readonly effectiveDegreesOfFreedom: number
      readonly contributions: readonly number[]
      readonly secondOrderParts: readonly number[]
      readonly secondOrderStandardUncertainty: number
    }
  >
  readonly welchSatterthwaite: Published<Linear, Linear & { effectiveDegreesOfFreedom: number }>
  readonly fourAlike: Published<Pick<Linear, 'expandedUncertainty'>, Linear & { interval: Pair }>
  readonly oneTenTimes: Published<Linear, Linear & { interval: Pair }>
  readonly mass: Published<
    Trials & Linear,
    Trials & Linear & { symmetricInterval: Pair; secondOrderStandardUncertainty: number }
  >
  readonly comparisonLoss: {
    readonly expression: string
    readonly standardUncertainty: number
    readonly cases: readonly {
      readonly x1: number
      readonly printed: Trials
      readonly recomputed: Trials & { readonly linear: number }
    }[]
  }
  readonly gaugeBlock: Published<Trials, Trials & { symmetricInterval: Pair }>
}>('uncertainty/published-models.json')

/** Squares of standard uncertainty over half width; JCGM 100:2008, 4.3.7 to 4.3.9. */
const shares = { rectangular: 1 / 3, triangular: 1 / 6, 'u-shaped': 1 / 2, normal: 1, t: 1 }

function modelOf(one: Published<unknown, unknown>): MeasurementModel {
  const { expression, quantities } = one
  return {
    expression,
    quantities: quantities.map((stated) => {
      const { name, value, distribution, halfWidth = Number.NaN } = stated
      const u = stated.standardUncertainty ?? halfWidth * Math.sqrt(shares[distribution])
      return quantity(name, value, u, distribution, stated.degreesOfFreedom ?? null)
    }),
  }
}

export const endGauge = modelOf(published.endGauge)
export const relativeProduct = modelOf(published.welchSatterthwaite)
export const fourAlike = modelOf(published.fourAlike)
export const oneTenTimes = modelOf(published.oneTenTimes)
export const massCalibration = modelOf(published.mass)
export const gaugeBlock = modelOf(published.gaugeBlock)

export function comparisonLoss(x1: number): MeasurementModel {
  const { expression, standardUncertainty: u } = published.comparisonLoss
  return { expression, quantities: [quantity('x1', x1, u), quantity('x2', 0, u)] }
}
