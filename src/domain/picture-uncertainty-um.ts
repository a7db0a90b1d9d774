import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import { pictureSources } from './picture-sources.ts'

/**
 * The standard uncertainty of a flatness by its picture alone: without optical flat, lamp and what
 * bends them.
 * @param budget of the reading; without a line of a picture it is 0
 * @returns um
 */
export function pictureUncertaintyUm(budget: readonly BudgetLine[]): number {
  const own = budget.filter((one) => pictureSources.includes(one.source))
  return Math.hypot(...own.map((one) => one.contribution))
}
