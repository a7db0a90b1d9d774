import type { BandModel, BandTables } from './band-fit.ts'
import { bandResiduals } from './band-residuals.ts'
import type { LandCells } from './land-cells.ts'

/** What a fit leaves open, over the land and in its cells. */
export interface FitQuality {
  /** Share of the variance of the light that the model explains, outliers weighed down. */
  readonly explained: number
  /** Robust standard deviation of the residuals, relative light. */
  readonly spread: number
  /** The swing of the bands, relative to the mean light. */
  readonly swing: number
  /** Share of the cells in which bands can be seen: not hidden, not under glare. */
  readonly usableShare: number
  /** Share of the usable cells that the model explains; and of those at the edges. */
  readonly explainedShare: number
  readonly edgeShare: number
  /** Sectors, by number, in which most usable cells are unexplained. */
  readonly doubtfulSectors: readonly number[]
  /** How many of them at most lie side by side. */
  readonly doubtfulInRow: number
}

/** A cell is explained when its residuals stay below this share of the swing. */
const explainedBelow = 0.25

/** Light that bands of this swing do not reach. */
const brighterThan = 1.25

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

const deviation = (values: readonly number[]): number => {
  const mean = values.reduce((a, b) => a + b, 0) / values.length
  return Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length)
}

interface Cell {
  readonly residuals: number[]
  readonly light: number[]
  readonly modelled: number[]
}

type Verdict = 'explained' | 'unexplained' | 'hidden'

/**
 * Hidden: too few samples, no bands where the model has some, or light added that is
 * brighter than any band. */
function judgeCell(cell: Cell, total: number, swing: number): Verdict {
  if (cell.residuals.length < 0.5 * total) return 'hidden'
  const size = 1.4826 * middle(cell.residuals.map(Math.abs))
  if (size < explainedBelow * swing) return 'explained'
  if (deviation(cell.light) < 0.45 * deviation(cell.modelled)) return 'hidden'
  const bright = cell.residuals.filter((one) => one > 0).length
  const beyond = cell.light.filter((one) => one > brighterThan * swing).length
  const isGlare = bright > 0.85 * cell.residuals.length && beyond > 0.1 * cell.light.length
  return isGlare ? 'hidden' : 'unexplained'
}

/** The longest run of numbers side by side, closed around. */
function longestRow(sectors: readonly number[], sectorCount: number): number {
  const has = new Set(sectors)
  return Math.max(
    0,
    ...sectors.map((first) => {
      let length = 1
      while (length < sectorCount && has.has((first + length) % sectorCount)) length++
      return length
    }),
  )
}

/**
 * Says how well a model of bands explains the light over the land.
 *
 * @param tables the samples of the fit
 * @param model the fit
 * @param cells cells of the land, and which of its samples the tables hold
 * @returns shares from 0 to 1
 * Source: the cells and limits were chosen on synthetic photographs.
 * @example fitQuality({ count: 1, termCount: 1, phi: new Float64Array([1]),
 *   quadratic: new Float64Array([1, 0, 0, 0, 0, 0]), relative: new Float64Array([0.5]) },
 *   { gap: new Float64Array(1), background: new Float64Array(1),
 *   swing: new Float64Array([0.5, 0, 0, 0, 0, 0]), second: 0 },
 *   { land: { sectorCount: 1, rowCount: 1, cellOf: new Int32Array(1),
 *   totals: new Int32Array([1]) }, indexes: [0] }).swing // 0.5
 */
export function fitQuality(
  tables: BandTables,
  model: BandModel,
  cells: { readonly land: LandCells; readonly indexes: readonly number[] },
): FitQuality {
  const { sectorCount, rowCount, cellOf, totals } = cells.land
  const { residuals } = bandResiduals(tables, model)
  const swing = Math.abs(model.swing[0] as number)
  const spread = 1.4826 * middle(Array.from(residuals, Math.abs))
  const scale = Math.max(2.4 * spread, 0.06 * swing) + 1e-12
  const list = Array.from(totals, (): Cell => ({ residuals: [], light: [], modelled: [] }))
  let [left, all, mean] = [0, 0, 0]
  for (let i = 0; i < tables.count; i++) mean += (tables.relative[i] as number) / tables.count
  for (let i = 0; i < tables.count; i++) {
    const residual = residuals[i] as number
    const value = tables.relative[i] as number
    const weight = 1 / (1 + (residual / scale) ** 2)
    left += weight * residual * residual
    all += weight * (value - mean) ** 2
    const cell = list[cellOf[cells.indexes[i] as number] as number] as Cell
    cell.residuals.push(residual)
    cell.light.push(value)
    cell.modelled.push(value - residual)
  }
  const verdicts = list.map((cell, at) => judgeCell(cell, totals[at] as number, swing))
  const isEdge = (at: number) => {
    const row = Math.floor(at / sectorCount)
    return row === 0 || row === rowCount - 1
  }
  const count = (verdict: Verdict, edgesOnly: boolean) =>
    verdicts.filter((one, at) => one === verdict && (!edgesOnly || isEdge(at))).length
  const share = (edgesOnly: boolean) => {
    const explained = count('explained', edgesOnly)
    return explained / Math.max(1, explained + count('unexplained', edgesOnly))
  }
  const doubtfulSectors = Array.from({ length: sectorCount }, (_, k) => k).filter((sector) => {
    const ofSector = verdicts.filter((_, at) => at % sectorCount === sector)
    const open = ofSector.filter((one) => one === 'unexplained').length
    return open >= Math.max(1, ofSector.filter((one) => one !== 'hidden').length / 2)
  })
  return {
    explained: 1 - left / (all + 1e-12),
    spread,
    swing,
    usableShare: 1 - count('hidden', false) / verdicts.length,
    explainedShare: share(false),
    edgeShare: share(true),
    doubtfulSectors,
    doubtfulInRow: longestRow(doubtfulSectors, sectorCount),
  }
}
