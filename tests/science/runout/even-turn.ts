import type { DialPoint } from '../../../src/science/runout/dial-point.ts'

/** Readings at even positions, the first at the mark. */
export const evenTurn = (values: readonly number[]): DialPoint[] =>
  values.map((valueUm, i) => ({ angleDeg: (360 * i) / values.length, valueUm }))

/** E13 of the facts: a dial read at eight positions. */
export const eightPositions = evenTurn([0, 7, 24, 38, 40, 33, 16, 2])

export const evenAngles = (count: number) =>
  Array.from({ length: count }, (_, i) => (360 * i) / count)

export const rad = (deg: number) => (deg * Math.PI) / 180
