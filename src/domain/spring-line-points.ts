import type { SpringLoad } from '../science/spring/spring-rate.ts'
import type { NewSpringCheck } from './spring-check.ts'

/** The points of its line: one load is joined by the free length, at which there is none. */
export function springLinePoints({
  loads,
  freeLength,
}: Pick<NewSpringCheck, 'loads' | 'freeLength'>): readonly SpringLoad[] {
  const points = loads.map(({ length, load }) => ({ lengthMm: length.mm, loadN: load.n }))
  return points.length === 1 ? [{ lengthMm: freeLength.mm, loadN: 0 }, ...points] : points
}
