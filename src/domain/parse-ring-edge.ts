import type { Ellipse } from '../science/photo/ellipse.ts'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import type { Fields, Input } from './fields.ts'

/** Pixels: wider than any picture that is taken. */
export const ringEdgeBounds = {
  placePx: { min: -100_000, max: 100_000 },
  halfAxisPx: { min: 1, max: 100_000 },
  rotationDeg: { min: -360, max: 360 },
  pointCount: { min: 6, max: 1000 },
} as const

/**
 * Reads an edge of a ring in a picture: an ellipse under `name`, or places on it under
 * `${name}Points`, `[[x, y], …]`; null where neither is given.
 */
export function parseRingEdge(
  fields: Fields,
  input: Input,
  name: 'outer' | 'inner',
): EdgeAsSet | null {
  const pointsName = `${name}Points`
  const hasEllipse = input[name] != null
  const hasPoints = input[pointsName] != null
  if (hasEllipse && hasPoints) {
    fields.fault(name, 'one-of-two', { one: name, other: pointsName })
    return null
  }
  if (hasEllipse) return parseEllipse(fields.group(name))
  return hasPoints ? parsePoints(fields, pointsName, input[pointsName]) : null
}

/** Reads an ellipse of a picture. */
export function parseEllipse(part: Fields): Ellipse {
  const { placePx, halfAxisPx, rotationDeg } = ringEdgeBounds
  part.only('cx', 'cy', 'rx', 'ry', 'rotationDeg')
  return {
    cx: part.decimal('cx', placePx),
    cy: part.decimal('cy', placePx),
    rx: part.decimal('rx', halfAxisPx),
    ry: part.decimal('ry', halfAxisPx),
    rotationDeg: part.optionalDecimal('rotationDeg', rotationDeg) ?? 0,
  }
}

function parsePoints(fields: Fields, name: string, given: unknown): EdgeAsSet | null {
  const { placePx, pointCount } = ringEdgeBounds
  if (!Array.isArray(given) || given.length < pointCount.min || given.length > pointCount.max) {
    fields.fault(name, 'too-few', pointCount)
    return null
  }
  const points: (readonly [number, number])[] = []
  for (const [index, one] of given.entries()) {
    if (isPlace(one)) points.push(one)
    else fields.fault(`${name}[${index}]`, 'not-a-place', placePx)
  }
  return points
}

function isPlace(one: unknown): one is readonly [number, number] {
  const { min, max } = ringEdgeBounds.placePx
  const isWithin = (value: unknown) => typeof value === 'number' && value >= min && value <= max
  return Array.isArray(one) && one.length === 2 && one.every(isWithin)
}
