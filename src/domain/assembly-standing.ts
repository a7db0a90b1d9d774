import type { CertifiedAssembly } from './certified-strip.ts'

export const assemblyStandings = ['amiss', 'as-asked', 'not-all-compared', 'nothing-asked'] as const
/** How an assembly stands to its design as a whole. */
export type AssemblyStanding = (typeof assemblyStandings)[number]

/**
 * As asked for only where every value that the design asks for was compared and is within: one
 * torque that fits says nothing of a length nobody could compare. Works on stored records too, so
 * that an old one gets no better word than its values allow.
 */
export function assemblyStanding(one: CertifiedAssembly): AssemblyStanding {
  if (one.isAmiss) return 'amiss'
  const asked = [
    ...(one.designWorkingLengthMm === null ? [] : [one.workingLength]),
    ...(one.designLoadN === null ? [] : [one.load]),
    ...one.setScrews.flatMap((screw) => (screw.designTorqueNm === null ? [] : [screw.verdict])),
  ]
  if (asked.length === 0) return 'nothing-asked'
  const isCompared = asked.every((verdict) => verdict === 'within')
  return isCompared && one.loadFrom !== 'corrected-check' ? 'as-asked' : 'not-all-compared'
}
