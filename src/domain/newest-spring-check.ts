import { currentOnly } from './current-only.ts'
import type { SpringCheck } from './spring-check.ts'

/** As left where there is one: the springs that go in, not those that came out. */
export function newestSpringCheck(checks: readonly SpringCheck[]): SpringCheck | undefined {
  const standing = currentOnly(checks)
  const asLeft = standing.filter((one) => one.condition === 'as-left')
  return asLeft.at(-1) ?? standing.at(-1)
}
