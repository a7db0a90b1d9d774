import type { ConformityDecision } from '../science/acceptance/decide-conformity.ts'
import type { DecisionRule } from '../science/acceptance/decision-rule.ts'
import type { AgreedRule } from './agreed-rule.ts'
import type { CertifiedLimit, Figure } from './certified-results.ts'
import type { Characteristic } from './characteristic.ts'
import type { DoubtAnswer } from './doubt.ts'
import type { JudgedReason, Verdict } from './judged.ts'
import type { PrintedUnitId } from './printed-unit.ts'
import type { ComponentKind } from './seal.ts'
import type { TestSection } from './static-test.ts'
import type { Uncertainty } from './uncertainty.ts'
import type { UseFault } from './use-exception.ts'

/** The rule as it was agreed before measuring. */
export type CertifiedRule = {
  readonly rule: DecisionRule
  readonly probability: number
  readonly reference: string
  readonly scope: AgreedRule['scope']
  readonly byName: string
  readonly at: string
}

/** A result that counts for the release, as it was decided. Figures in `unit`. */
export type CertifiedResult = {
  readonly characteristic: Characteristic
  readonly componentKind: ComponentKind | null
  readonly section: TestSection | null
  readonly unit: PrintedUnitId
  /** Null for a face that could not be read. */
  readonly value: Figure | null
  /** Value and expanded uncertainty rounded by one rule: `0.588 ± 0.071`. */
  readonly text: string
  /** Null where it is not known, and in records older than budgets. */
  readonly uncertainty: CertifiedUncertainty | null
  /** The limit as it holds here, one per millimetre multiplied out. */
  readonly lower: Figure | null
  readonly upper: Figure | null
  readonly limit: CertifiedLimit | null
  readonly verdict: Verdict
  readonly why: JudgedReason
  /** In the stored unit of the characteristic: what the picture is drawn from. */
  readonly decision: ConformityDecision | null
  /** As printed, in percent; null where nothing was weighed. */
  readonly conformancePercent: Figure | null
  /** What is left of it: the share of what is known that lies beyond a limit. */
  readonly beyondPercent: Figure | null
  /** That the statement made is wrong; null where none was made. */
  readonly riskPercent: Figure | null
  /** What would have to improve where nothing could be decided. */
  readonly largestSource: string | null
  readonly concession: CertifiedConcession | null
  readonly instrumentNumbers: readonly string[]
  readonly method: string
  readonly recordedByName: string
  readonly recordedAt: string
}

/** The budget that was kept with the result, in the stored unit of its characteristic. */
export type CertifiedUncertainty = Omit<Uncertainty, 'model'>

export type CertifiedConcession = {
  readonly reason: string
  readonly customerReference: string
  readonly byName: string
  readonly at: string
}

/** An instrument that was used although it might not be. */
export type CertifiedException = {
  readonly instrumentNumber: string
  readonly fault: UseFault
  readonly reason: string
  readonly allowedByName: string
  readonly allowedAt: string
}

/** An instrument that was found out of tolerance after it was used, and what was said about it. */
export type CertifiedDoubt = {
  readonly instrumentNumber: string
  readonly foundOn: string
  readonly answer: DoubtAnswer | null
  readonly reason: string
  readonly byName: string
}
