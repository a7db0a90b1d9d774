import { annularTerms } from '../surface/annular-terms.ts'
import type { BandModel, BandTables } from './band-fit.ts'
import { bandPrior } from './band-prior.ts'
import { bandResiduals } from './band-residuals.ts'
import { bandTables } from './band-tables.ts'
import { carrierSeeds } from './carrier-seeds.ts'
import { type BandFit, fitBands } from './fit-bands.ts'
import { gradientSeed } from './gradient-seed.ts'
import { localFrequencies } from './local-frequencies.ts'
import { planeImage } from './plane-image.ts'
import { quadraticCount } from './quadratic-at.ts'
import type { RingSamples } from './sample-ring.ts'

/** The surface that explains the light best, the coarser one it grew from, and its rivals. */
export interface BandSolution {
  readonly fine: BandFit
  readonly coarse: BandFit
  /** Other surfaces that the search came to, coarse. */
  readonly rivals: readonly BandFit[]
  /** Swing of the light itself, before any fit, relative to its mean. */
  readonly lightSwing: number
  readonly tables: BandTables
  /** The samples that the tables hold. */
  readonly indexes: readonly number[]
}

const effectiveCount = 300
/** Below this there is no land to speak of. */
const leastCount = 500
const coarseCount = 1400
const rivalCount = 2200

/** Every so many of the usable samples, about `wanted` of them, evenly. */
function thin(usable: readonly number[], wanted: number): number[] {
  const count = Math.min(wanted, usable.length)
  return Array.from({ length: count }, (_, k) => {
    // A fixed irregular step inside each stride keeps the choice from beating with the rows.
    const part = (k * 0.618_033_988_75) % 1
    return usable[Math.floor(((k + part) * usable.length) / count)] as number
  })
}

function robustSpread(residuals: Float64Array): number {
  const sizes = residuals.map(Math.abs).sort()
  return 1.4826 * (sizes[Math.floor(sizes.length / 2)] as number)
}

/** Swing of the bands from the light that a tenth of the land exceeds, up and down. */
function usualSwing(relative: Float64Array): number {
  const sorted = Float64Array.from(relative).sort()
  const high = sorted[Math.floor(0.9 * sorted.length)] as number
  const low = sorted[Math.floor(0.1 * sorted.length)] as number
  // A cosine exceeds 0.951 for a tenth of its period.
  return Math.max((high - low) / 1.902, 1e-3)
}

/** A longer model with zeros for the terms that are new. */
function lengthened(model: BandModel, gapCount: number, backgroundCount: number): BandModel {
  const gap = new Float64Array(gapCount)
  gap.set(model.gap.subarray(0, gapCount))
  const background = new Float64Array(backgroundCount)
  background.set(model.background.subarray(0, backgroundCount))
  return { ...model, gap, background }
}

interface Stage {
  readonly level: number
  readonly backgroundLevel: number
  readonly scale: number
  readonly noise: number
  readonly mostRounds: number
  readonly tolerance: number
}

function runStage(tables: BandTables, start: BandModel, swing: number, stage: Stage): BandFit {
  const terms = annularTerms(stage.level)
  const backgroundCount =
    stage.backgroundLevel === 0 ? 1 : annularTerms(stage.backgroundLevel).length + 1
  const model = lengthened(start, terms.length + 1, backgroundCount)
  return fitBands(tables, model, {
    ...stage,
    effectiveCount,
    prior: bandPrior(terms, { backgroundCount, swing }),
  })
}

/** The phase with which the light agrees best, for a form without its constant. */
function withPhase(tables: BandTables, gap: Float64Array): Float64Array {
  let [re, im] = [0, 0]
  for (let i = 0; i < tables.count; i++) {
    let order = 0
    for (let k = 1; k < gap.length; k++) {
      order += (gap[k] as number) * (tables.phi[i * tables.termCount + k] as number)
    }
    re += (tables.relative[i] as number) * Math.cos(2 * Math.PI * order)
    im -= (tables.relative[i] as number) * Math.sin(2 * Math.PI * order)
  }
  const phased = gap.slice()
  phased[0] = Math.atan2(im, re) / (2 * Math.PI)
  return phased
}

/** First guesses of the gap, without phases. */
function guessGaps(
  samples: RingSamples,
  relative: Float64Array,
  options: { readonly radiusRatio: number; readonly isThorough: boolean },
): Float64Array[] {
  const { radiusRatio, isThorough } = options
  const image = planeImage(samples, relative, 128)
  const guesses = carrierSeeds(image, { radiusRatio, isThorough: false, wanted: 6 })
  if (isThorough) {
    // A coarser grid still holds twenty bands, and six hundred transforms take a quarter.
    const small = planeImage(samples, relative, 64)
    guesses.push(...carrierSeeds(small, { radiusRatio, isThorough, wanted: 12 }))
  }
  const gaps = guesses.map((one) => one.gap)
  for (const window of [0.1, 0.16, 0.24]) {
    const gap = gradientSeed(localFrequencies(image, { radiusRatio, window }), radiusRatio)
    if (gap !== null) gaps.push(gap)
  }
  return gaps
}

/** Whether two fits are the same surface, up to the sign of the gap. */
function isSame(a: BandFit, b: BandFit): boolean {
  const apart = (sign: number) => {
    let sum = 0
    const length = Math.min(a.model.gap.length, b.model.gap.length)
    for (let k = 1; k < length; k++) {
      sum += ((a.model.gap[k] as number) - sign * (b.model.gap[k] as number)) ** 2
    }
    return Math.sqrt(sum)
  }
  return Math.min(apart(1), apart(-1)) < 0.12
}

function distinct(fits: readonly BandFit[], wanted: number): BandFit[] {
  const sorted = [...fits].sort((a, b) => a.cost - b.cost)
  const chosen: BandFit[] = []
  for (const fit of sorted) {
    if (chosen.length >= wanted) break
    if (chosen.every((other) => !isSame(fit, other))) chosen.push(fit)
  }
  return chosen
}

/**
 * Finds surfaces that explain the bands on a land: guesses, then fits from coarse to fine, with a
 * wide scale first, since a narrow one lets a side of the ring lock an order wrong.
 *
 * @param samples light over the land
 * @param relative their relative light
 * @param options radiusRatio; isThorough: tries many more guesses
 * @returns the best surface with its rivals; null where there is too little to fit
 * Source: direct fit of the whole picture of bands; its stages were chosen on synthetic
 *   photographs.
 * @example solveBands({ xs: new Float64Array(0), ys: new Float64Array(0), pitch: 1,
 *   values: new Float64Array(0), isUsable: new Uint8Array(0) }, new Float64Array(0),
 *   { radiusRatio: 0.6, isThorough: false }) // null
 */
export function solveBands(
  samples: RingSamples,
  relative: Float64Array,
  options: { readonly radiusRatio: number; readonly isThorough: boolean },
): BandSolution | null {
  const { radiusRatio, isThorough } = options
  const usable: number[] = []
  samples.isUsable.forEach((is, i) => {
    if (is === 1) usable.push(i)
  })
  if (usable.length < leastCount) return null
  const few = thin(usable, coarseCount)
  const swing = usualSwing(Float64Array.from(few, (i) => relative[i] as number))
  // A spot of glare is many times as bright as any band and would rule every guess.
  const most = 1.3 * swing
  const calm = relative.map((value) => Math.min(most, Math.max(-most, value)))
  const coarse = bandTables(samples, calm, { radiusRatio, level: 2, indexes: few })
  const first: Omit<BandModel, 'gap'> = {
    background: new Float64Array(1),
    swing: Float64Array.from({ length: quadraticCount }, (_, k) => (k === 0 ? swing : 0)),
    second: 0,
  }
  const guesses = guessGaps(samples, calm, options)
  const rough = guesses.map((gap) => {
    const seed = withPhase(coarse, gap)
    const isRich = gap.length > annularTerms(1).length + 1
    return runStage(coarse, { ...first, gap: seed }, swing, {
      level: isRich ? 2 : 1,
      backgroundLevel: 0,
      scale: 0.6 * swing,
      noise: 0.3 * swing,
      mostRounds: 14,
      tolerance: 2e-3,
    })
  })
  const better = distinct(rough, isThorough ? 8 : 5).map((fit) =>
    runStage(coarse, fit.model, swing, {
      level: 2,
      backgroundLevel: 1,
      scale: 0.5 * swing,
      noise: 0.2 * swing,
      mostRounds: 14,
      tolerance: 1e-3,
    }),
  )
  const candidates = distinct(better, 3)
  const [leader] = candidates
  if (leader === undefined) return null
  const fewer = bandTables(samples, relative, {
    radiusRatio,
    level: 3,
    indexes: thin(usable, rivalCount),
  })
  const third = candidates.map((fit) =>
    runStage(fewer, fit.model, swing, {
      level: 3,
      backgroundLevel: 2,
      scale: 0.4 * swing,
      noise: 0.12 * swing,
      mostRounds: 10,
      tolerance: 1e-3,
    }),
  )
  const [best, ...rivals] = [...third].sort((a, b) => a.cost - b.cost) as [BandFit, ...BandFit[]]
  const tables = bandTables(samples, relative, { radiusRatio, level: 4, indexes: usable })
  const last = (start: BandFit, level: number, mostRounds: number): BandFit => {
    const spread = robustSpread(bandResiduals(tables, start.model).residuals)
    return runStage(tables, start.model, swing, {
      level,
      backgroundLevel: 3,
      scale: Math.max(2.4 * spread, 0.06 * swing),
      noise: Math.max(spread, 0.02 * swing),
      mostRounds,
      tolerance: 2e-4,
    })
  }
  const coarser = last(best, 3, 5)
  const finer = last(coarser, 4, 8)
  return { fine: finer, coarse: coarser, rivals, lightSwing: swing, tables, indexes: usable }
}
