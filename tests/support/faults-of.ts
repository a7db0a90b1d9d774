import type { Parsed } from '../../src/domain/parsed.ts'

/** The faults of a refusal, as `field kind`; none for what was accepted. */
export function faultsOf(parsed: Parsed<unknown>): readonly string[] {
  return parsed.ok ? [] : parsed.faults.map((one) => `${one.field} ${one.kind}`)
}

/** The value of what was accepted; throws with the faults otherwise. */
export function accepted<T>(parsed: Parsed<T>): T {
  if (parsed.ok) return parsed.value
  throw new Error(`refused: ${faultsOf(parsed).join(', ')}`)
}
