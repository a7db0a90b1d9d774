import type { Evidence } from './evidence.ts'
import type { ReadingCondition } from './flatness.ts'
import { type ShownResult, shownResult } from './shown-result.ts'
import { standingReadings, standingTests, standingValues } from './standing.ts'

/** A result that doesn't count for the release, and why not. */
export type OtherResult = {
  readonly shown: ShownResult
  readonly condition: ReadingCondition | null
  /** A later one of the same kind speaks instead. */
  readonly isOvertaken: boolean
}

/**
 * Valid results that don't count for the release: as found, or overtaken by a later one. What was
 * corrected stands among the corrections.
 */
export function otherResults(evidence: Evidence): readonly OtherResult[] {
  const { flatnessReadings, staticTests, measuredValues } = evidence
  const standing = [
    standingReadings(evidence),
    standingTests(staticTests),
    standingValues(measuredValues),
  ] as const
  const conditional = [
    ...flatnessReadings.map((one) => {
      return { kind: 'flatness-reading' as const, one, stands: standing[0].includes(one) }
    }),
    ...measuredValues.map((one) => {
      return { kind: 'measured-value' as const, one, stands: standing[2].includes(one) }
    }),
  ].filter(({ one, stands }) => one.replacedById === null && !(stands && isAsLeft(one)))
  const tests = staticTests.filter((one) => one.replacedById === null && !standing[1].includes(one))
  const others = [
    ...conditional.map(({ kind, one, stands }) => ({
      shown: shownResult(evidence, kind, one.id),
      condition: one.condition,
      isOvertaken: !stands,
    })),
    ...tests.flatMap((one) =>
      (['static-test-drop', 'static-test-leak'] as const).map((kind) => ({
        shown: shownResult(evidence, kind, one.id),
        condition: null,
        isOvertaken: true,
      })),
    ),
  ]
  return others.flatMap(({ shown, ...rest }) => (shown === undefined ? [] : [{ shown, ...rest }]))
}

function isAsLeft(one: { readonly condition: ReadingCondition }): boolean {
  return one.condition === 'as-left'
}
