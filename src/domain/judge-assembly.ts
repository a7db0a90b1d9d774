import type { NewAssembly, SetScrews } from './assembly.ts'
import type { CompleteAssembly } from './complete-assembly.ts'
import { isLoadOutdated } from './is-load-outdated.ts'
import { isWithinLimits } from './is-within-limits.ts'
import { shareOf } from './share-of.ts'
import type { SpringCheck } from './spring-check.ts'

/** Against what the design asks for; `not-stated`: no value, no design value or no tolerance. */
export type AssemblyVerdict = 'within' | 'beyond' | 'not-stated'

export type JudgedAssembly = {
  readonly workingLength: AssemblyVerdict
  readonly load: AssemblyVerdict
  /** In the order of the set screws. */
  readonly torques: readonly AssemblyVerdict[]
  /** Beyond, or something that is never right: it doesn't turn, or clips are missing. */
  readonly isAmiss: boolean
}

/**
 * Holds an assembly against the design values typed with it. It blocks nothing; it is shown.
 * @param checks of its springs, replaced ones too: a load by one of these is held against nothing
 */
export function judgeAssembly(
  assembly: CompleteAssembly,
  checks: readonly SpringCheck[],
): JudgedAssembly {
  const { workingLength: length, designWorkingLengthMm, workingLengthToleranceMm } = assembly
  const { designLoadN, loadTolerancePercent } = assembly
  const loadN = isLoadOutdated(assembly, checks) ? null : assembly.loadN
  const workingLength = against(length.mm, designWorkingLengthMm, workingLengthToleranceMm)
  const load = against(loadN, designLoadN, shareOf(designLoadN, loadTolerancePercent))
  const torques = assembly.setScrews.map((one) => torqueVerdict(one, assembly))
  const isBeyond = [workingLength, load, ...torques].includes('beyond')
  const isAmiss = isBeyond || !assembly.isTurningFree || assembly.clips === 'not-fitted'
  return { workingLength, load, torques, isAmiss }
}

function torqueVerdict(
  { torqueNm, designTorqueNm }: SetScrews,
  { torqueTolerancePercent }: Pick<NewAssembly, 'torqueTolerancePercent'>,
): AssemblyVerdict {
  return against(torqueNm, designTorqueNm, shareOf(designTorqueNm, torqueTolerancePercent))
}

function against(
  value: number | null,
  design: number | null,
  tolerance: number | null,
): AssemblyVerdict {
  if (value === null || design === null || tolerance === null) return 'not-stated'
  const limits = { lower: design - tolerance, upper: design + tolerance }
  return isWithinLimits(value, limits) ? 'within' : 'beyond'
}
