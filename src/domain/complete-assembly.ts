import { workingLoad } from '../science/spring/working-load.ts'
import type { Assembly, NewAssembly } from './assembly.ts'
import { methods } from './methods.ts'
import { newestSpringCheck } from './newest-spring-check.ts'
import type { SpringCheck } from './spring-check.ts'
import { springOf } from './spring-of.ts'

/** An assembly with its load, before the store gives it an id, a name and a time. */
export type CompleteAssembly = Omit<
  Assembly,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Adds to a parsed assembly the load at its working length: as measured, or else what the springs
 * press with by the newest check of them.
 */
export function completeAssembly(
  assembly: NewAssembly,
  checks: readonly SpringCheck[],
): CompleteAssembly {
  return { ...assembly, ...loadOf(assembly, checks), method: methods.springLoad }
}

function loadOf(
  { measuredLoad, workingLength }: NewAssembly,
  checks: readonly SpringCheck[],
): Pick<Assembly, 'loadN' | 'loadFrom' | 'springCheckId'> {
  if (measuredLoad !== null) {
    return { loadN: measuredLoad.n, loadFrom: 'measured', springCheckId: null }
  }
  const check = newestSpringCheck(checks)
  const spring = check === undefined ? null : springOf(check)
  if (check === undefined || spring === null) {
    return { loadN: null, loadFrom: null, springCheckId: null }
  }
  const { rateNPerMm, freeLengthMm } = spring
  const { loadN } = workingLoad({
    springsCount: check.springsCount,
    rateNPerMm,
    // Longer than free, nothing presses.
    freeLengthMm: Math.max(freeLengthMm, workingLength.mm),
    workingLengthMm: workingLength.mm,
  })
  return { loadN, loadFrom: 'spring-check', springCheckId: check.id }
}
