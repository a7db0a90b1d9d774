import type { Judged } from './judged.ts'
import type { StaticTest } from './static-test.ts'
import type { Uncertainty } from './uncertainty.ts'

/**
 * The uncertainty of a figure of a test, as the figure is judged: a leak rate is held against its
 * limit at the temperature of the limit, and its uncertainty goes with it.
 */
export function testUncertainty(
  test: Pick<StaticTest, 'dropUncertainty' | 'leakUncertainty' | 'leakPaM3PerS'>,
  judged: Pick<Judged, 'characteristic' | 'value'>,
): Uncertainty | null {
  if (judged.characteristic === 'static-drop') return test.dropUncertainty
  const { leakUncertainty: kept, leakPaM3PerS } = test
  const factor = judged.value === null || leakPaM3PerS === 0 ? 1 : judged.value / leakPaM3PerS
  if (kept === null || factor === 1) return kept
  return {
    ...kept,
    standardUncertainty: kept.standardUncertainty * factor,
    expandedUncertainty: kept.expandedUncertainty * factor,
    budget: kept.budget.map((line) => ({
      ...line,
      sensitivity: line.sensitivity * factor,
      contribution: line.contribution * factor,
    })),
    model:
      kept.model === null
        ? null
        : { ...kept.model, expression: `(${kept.model.expression}) * ${factor}` },
  }
}
