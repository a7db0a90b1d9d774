import type { Assembly } from '../../domain/assembly.ts'
import { numberValue } from './as-recorded.ts'
import { typedValues } from './typed-rows.ts'

type Values = Readonly<Record<string, string>>

/** A fresh form: what the design of the seal asked for last. Nothing that is set is filled in. */
export function designOf(last: Assembly | undefined): Values {
  if (last === undefined) return {}
  const setScrews = last.setScrews.map((one) => ({
    name: one.name,
    quantityCount: String(one.quantityCount),
    designTorqueNm: one.designTorqueTyped ?? numberValue(one.designTorqueNm),
  }))
  return { ...typedValues({ setScrews }), ...design(last) }
}

/** The form filled with what an earlier record says, to be corrected. */
export function valuesOfAssembly(assembly: Assembly): Values {
  const setScrews = assembly.setScrews.map((one) => ({
    name: one.name,
    quantityCount: String(one.quantityCount),
    torqueNm: one.torqueTyped ?? numberValue(one.torqueNm),
    designTorqueNm: one.designTorqueTyped ?? numberValue(one.designTorqueNm),
  }))
  return {
    ...typedValues({ setScrews }),
    ...design(assembly),
    workingLengthMm: assembly.workingLength.typed,
    measuredLoadN: assembly.measuredLoad?.typed ?? '',
    clips: assembly.clips,
    clipsCount: numberValue(assembly.clipsCount),
    lubricant: assembly.lubricant,
    isTurningFree: assembly.isTurningFree ? 'yes' : 'no',
    note: assembly.note,
  }
}

function design(assembly: Assembly): Values {
  return {
    designWorkingLengthMm: numberValue(assembly.designWorkingLengthMm),
    workingLengthToleranceMm: numberValue(assembly.workingLengthToleranceMm),
    designLoadN: numberValue(assembly.designLoadN),
    loadTolerancePercent: numberValue(assembly.loadTolerancePercent),
    torqueTolerancePercent: numberValue(assembly.torqueTolerancePercent),
    designSource: assembly.designSource,
  }
}
