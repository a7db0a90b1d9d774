import type { Assembly } from './assembly.ts'
import type { SpringCheck } from './spring-check.ts'

/**
 * Whether the check of springs that the load of an assembly came from was corrected since: then
 * nobody knows the load until the assembly is corrected too. A measured load stands by itself.
 */
export function isLoadOutdated(
  { springCheckId }: Pick<Assembly, 'springCheckId'>,
  checks: readonly SpringCheck[],
): boolean {
  return checks.some((one) => one.id === springCheckId && one.replacedById !== null)
}
