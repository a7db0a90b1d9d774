import type { CertifiedMeasuredValue } from './certified-measured-value.ts'

/** What was measured at one place, before and after the work; null: not measured. */
export type MeasuredPair = Pick<
  CertifiedMeasuredValue,
  'characteristic' | 'componentKind' | 'unit'
> & {
  readonly asFound: CertifiedMeasuredValue | null
  readonly asLeft: CertifiedMeasuredValue | null
}

/** The newest value of each characteristic and component before and after the work, side by side. */
export function measuredPairs(values: readonly CertifiedMeasuredValue[]): readonly MeasuredPair[] {
  const newest = values.filter((one) => one.isNewest)
  const pairs = new Map<string, MeasuredPair>()
  for (const one of newest) {
    const { characteristic, componentKind, unit, condition } = one
    const key = `${characteristic} ${componentKind}`
    const pair = pairs.get(key) ?? {
      ...{ characteristic, componentKind, unit },
      ...{ asFound: null, asLeft: null },
    }
    pairs.set(key, { ...pair, [condition === 'as-found' ? 'asFound' : 'asLeft']: one })
  }
  return [...pairs.values()]
}
