import { newestSpringCheck } from './newest-spring-check.ts'
import type { SpringCheck } from './spring-check.ts'
import type { TypedMm } from './wear-track.ts'

/** The length below which the springs that go in can't be set; null where nobody stated it. */
export function solidLengthOf(checks: readonly SpringCheck[]): TypedMm | null {
  return newestSpringCheck(checks)?.solidLength ?? null
}
