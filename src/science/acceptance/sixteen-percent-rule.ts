import { requireFinite } from '../check/require-finite.ts'
import { atMost } from './at-most.ts'

/** What the traces of one surface say by the 16 % rule. */
export type SixteenPercentRule = {
  /** How many of them lie above the limit. */
  readonly beyondCount: number
} & (
  | { readonly kind: 'accepted' | 'refused' }
  /** Nothing is said before so many were traced. */
  | { readonly kind: 'more'; readonly untilCount: number }
)

/** How many traces it takes where none, one or two of them lie above the limit. */
const neededCounts = [3, 6, 12] as const

/**
 * Says whether the figures of single traces keep an upper limit that 16 % of them may exceed.
 *
 * accepted: the first at most 0.7 x limit and none above it; none of 3, 1 of 6, 2 of 12 or more
 * above it; or at most 0.16 x n of n. refused: 3 or more above it, and more than 0.16 x n
 *
 * @param input values: one or more, in the order of tracing; upperLimit: in the same unit
 * @returns accepted, refused, or more with the count that decides; and how many lie above the limit
 * @throws RangeError without a value, or when a number is not finite
 * Validity: of a limit that is not one of the largest value (max), over traces at places of their
 *   own, the first where the largest values are expected. All that was traced counts: the steps of
 *   the standard end at the first one that accepts, so that ours accepts less.
 * Source: ISO 4288:1996, 5.2 and annex A (from memory).
 * @example sixteenPercentRule({ values: [0.13], upperLimit: 0.2 }).kind // accepted
 * @example sixteenPercentRule({ values: [0.19, 0.21, 0.15], upperLimit: 0.2 }).kind // more
 */
export function sixteenPercentRule(input: {
  readonly values: readonly number[]
  readonly upperLimit: number
}): SixteenPercentRule {
  const name = 'sixteenPercentRule'
  const limit = requireFinite(name, 'upperLimit', input.upperLimit)
  const values = input.values.map((one) => requireFinite(name, 'values', one))
  const [first] = values
  if (first === undefined) throw new RangeError(`${name} requires values, got none`)
  const beyondCount = values.filter((value) => !atMost({ value, limit })).length
  const isFarBelow = beyondCount === 0 && atMost({ value: first, limit: 0.7 * limit })
  const untilCount = neededCounts[beyondCount]
  if (untilCount === undefined) {
    const isFew = atMost({ value: beyondCount, limit: 0.16 * values.length })
    return { kind: isFew ? 'accepted' : 'refused', beyondCount }
  }
  return isFarBelow || values.length >= untilCount
    ? { kind: 'accepted', beyondCount }
    : { kind: 'more', untilCount, beyondCount }
}
