import { type BudgetLine, budgetLine } from '../science/uncertainty/budget-line.ts'
import { normalLine } from '../science/uncertainty/normal-line.ts'
import { pictureSources, renewedSources } from './picture-sources.ts'

/** A part of a combination: its budget in um, and its share of the mean, all adding up to 1. */
export type WeighedBudget = { readonly budget: readonly BudgetLine[]; readonly weight: number }

/**
 * The budget of a weighted mean of readings of one face.
 *
 * a source that every photograph draws anew: sqrt(sum of (weight x contribution)^2)
 * every other one, such as optical flat and lamp: sum of weight x contribution
 * disagreement: sqrt(ratio^2 - 1) x the root of the sum of squares of all that comes from the
 *   pictures, above ratio 1: the ratio was taken over all of it
 *
 * @param parts one or more
 * @param how areIndependent: false where two of them are of one photograph; ratio: Birge ratio of
 *   what was found over what was expected, 0 or more
 * @returns contributions in um
 * Validity: as if the figure were the mean of the figures; that of the mean surface is not larger.
 * Source: JCGM 100:2008, 5.1.2, and 5.2.2 note 1 for errors that are the same each time; the ratio:
 *   R. T. Birge, Phys. Rev. 40, 207 (1932), from memory.
 */
export function combinedBudget(
  parts: readonly WeighedBudget[],
  how: { readonly areIndependent: boolean; readonly ratio: number },
): readonly BudgetLine[] {
  const sources = [...new Set(parts.flatMap(({ budget }) => budget.map((one) => one.source)))]
  const isRenewed = (source: string) => how.areIndependent && renewedSources.includes(source)
  const lines = sources.map((source) => combinedLine(parts, source, isRenewed(source)))
  const ofPictures = lines
    .filter((one) => pictureSources.includes(one.source))
    .map((one) => one.contribution)
  const value = Math.sqrt(Math.max(0, how.ratio ** 2 - 1)) * Math.hypot(...ofPictures)
  return value > 0
    ? [...lines, normalLine({ source: 'disagreement', value, sensitivity: 1 })]
    : lines
}

function combinedLine(
  parts: readonly WeighedBudget[],
  source: string,
  isRenewed: boolean,
): BudgetLine {
  const lines = parts.flatMap(({ budget, weight }) =>
    budget.filter((one) => one.source === source).map((line) => ({ line, weight })),
  )
  const shares = lines.map(({ line, weight }) => weight * line.contribution)
  const sum = (of: readonly number[]) => of.reduce((a, b) => a + b, 0)
  const contribution = isRenewed ? Math.hypot(...shares) : sum(shares)
  const total = sum(lines.map(({ weight }) => weight))
  const mean = (of: (line: BudgetLine) => number) =>
    sum(lines.map(({ line, weight }) => weight * of(line))) / total
  const sensitivity = mean((line) => Math.abs(line.sensitivity))
  const value = sensitivity > 0 ? contribution / sensitivity : mean((line) => line.value)
  const distributions = new Set(lines.map(({ line }) => line.distribution))
  const [first] = distributions
  const distribution = distributions.size === 1 && first !== undefined ? first : 'normal'
  const degreesOfFreedom = fewestOf(lines.map(({ line }) => line.degreesOfFreedom))
  return budgetLine({
    source,
    value,
    distribution,
    sensitivity,
    ...(degreesOfFreedom === null ? {} : { degreesOfFreedom }),
  })
}

/** On the safe side: the line known worst. */
function fewestOf(degrees: readonly (number | null)[]): number | null {
  const known = degrees.filter((one) => one !== null)
  return known.length === 0 ? null : Math.min(...known)
}
