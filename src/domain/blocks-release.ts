import type { Verdict } from './judged.ts'

const blocking: readonly Verdict[] = ['fail', 'conditional-fail', 'undecidable']

/** Says whether a verdict keeps an order from its release, where no concession was recorded. */
export function blocksRelease(verdict: Verdict): boolean {
  return blocking.includes(verdict)
}
