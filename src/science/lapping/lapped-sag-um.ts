import { requireRange } from '../check/require-range.ts'

/**
 * Gives the sag that a ring takes from a lapping plate that is not flat, in µm: its middle above
 * its rim, so positive is convex. A concave plate laps a convex ring.
 *
 * lappedSagUm = -plateSagUm x (partDiameterMm / plateDiameterMm)^2
 *
 * @param input plateSagUm: middle of the plate above its rim, from -1000 to 1000;
 *   plateDiameterMm: over which that sag was read, from 1 to 5000;
 *   partDiameterMm: outer diameter of the ring, from 1 to plateDiameterMm
 * @returns µm over the whole outer diameter; a ring shows of it what lies between its diameters
 * @throws RangeError outside these ranges
 * Validity: plate of spherical form, ring lapped until it follows the plate.
 * Source: sag of a sphere, D^2 / (8 R), own derivation; the sense (concave plate, convex part) from
 *   a lapping job shop's pictures of flatness checks.
 * @example lappedSagUm({ plateSagUm: -25, plateDiameterMm: 380, partDiameterMm: 60 }) // 0.623
 */
export function lappedSagUm(input: {
  readonly plateSagUm: number
  readonly plateDiameterMm: number
  readonly partDiameterMm: number
}): number {
  const { plateSagUm, plateDiameterMm, partDiameterMm } = input
  requireRange('lappedSagUm', 'plateSagUm', plateSagUm, { from: -1000, to: 1000 })
  requireRange('lappedSagUm', 'plateDiameterMm', plateDiameterMm, { from: 1, to: 5000 })
  requireRange('lappedSagUm', 'partDiameterMm', partDiameterMm, { from: 1, to: plateDiameterMm })
  return 0 - plateSagUm * (partDiameterMm / plateDiameterMm) ** 2
}
