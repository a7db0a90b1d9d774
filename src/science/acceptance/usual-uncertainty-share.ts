/**
 * The share of the tolerance that an expanded uncertainty may take up before a set-up is said to
 * be unable to decide. Common practice, no source: an input of decideConformity, not a rule.
 */
export const usualUncertaintyShare = 1 / 3
