import type { Assembly } from './assembly.ts'
import { certifiedHand } from './certified-hand.ts'
import { lineOf } from './certified-springs.ts'
import type { CertifiedAssembly } from './certified-strip.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { optionalFigure } from './figure.ts'
import { isLoadOutdated } from './is-load-outdated.ts'
import { judgeAssembly } from './judge-assembly.ts'
import { typedFigure } from './typed-figure.ts'

type Records = Pick<Evidence, 'assemblies' | 'springChecks'>

/** How the seal leaves: its newest standing assembly; null where none was recorded. */
export function certifiedAssembly(evidence: Records): CertifiedAssembly | null {
  const newest = currentOnly(evidence.assemblies).at(-1)
  return newest === undefined ? null : assemblyAsPrinted(newest, evidence)
}

/** One of them, also while it is being entered. */
export function assemblyAsPrinted(
  assembly: Assembly,
  { assemblies, springChecks }: Records,
): CertifiedAssembly {
  const judged = judgeAssembly(assembly, springChecks)
  const isOutdated = isLoadOutdated(assembly, springChecks)
  const check = springChecks.find((one) => one.id === assembly.springCheckId)
  const typed = (value: number | null, text?: string) =>
    value === null ? null : typedFigure(value, text)
  return {
    workingLengthMm: typedFigure(assembly.workingLength.mm, assembly.workingLength.typed),
    designWorkingLengthMm: typed(assembly.designWorkingLengthMm),
    workingLengthToleranceMm: typed(assembly.workingLengthToleranceMm),
    workingLength: judged.workingLength,
    loadN:
      assembly.loadFrom === 'measured'
        ? typed(assembly.loadN, assembly.measuredLoad?.typed)
        : optionalFigure(assembly.loadN, { decimals: 1 }),
    loadFrom: isOutdated ? 'corrected-check' : assembly.loadFrom,
    designLoadN: typed(assembly.designLoadN),
    loadTolerancePercent: typed(assembly.loadTolerancePercent),
    load: judged.load,
    line: check === undefined || isOutdated ? null : lineOf(check),
    designSource: assembly.designSource,
    setScrews: assembly.setScrews.map((one, index) => ({
      name: one.name,
      quantityCount: one.quantityCount,
      torqueNm: typed(one.torqueNm, one.torqueTyped),
      designTorqueNm: typed(one.designTorqueNm, one.designTorqueTyped),
      verdict: judged.torques[index] ?? 'not-stated',
    })),
    torqueTolerancePercent: typed(assembly.torqueTolerancePercent),
    clips: assembly.clips,
    clipsCount: assembly.clipsCount,
    lubricant: assembly.lubricant,
    isTurningFree: assembly.isTurningFree,
    isAmiss: judged.isAmiss,
    ...certifiedHand(assembly, assemblies),
  }
}
