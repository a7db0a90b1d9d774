import type { ResidualMap } from '../science/photo/photo-reading.ts'

/**
 * How many of the seen cells differ from the fitted bands, over all seen ones.
 * @param least from which share of the swing a cell counts as different
 * @returns 0 to 1; 0 where nothing was seen
 */
export function unexplainedShare({ shares }: ResidualMap, least: number): number {
  const seen = shares.filter((one) => one !== null)
  if (seen.length === 0) return 0
  return seen.filter((one) => Math.abs(one) >= least).length / seen.length
}
