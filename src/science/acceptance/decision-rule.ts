/**
 * How a measured value is compared with a limit. simple: the limit itself; guard-u95: the limit
 * less the expanded uncertainty; guard-probability: proven with a stated probability, or disproven
 * with it, or neither; four-outcomes: the band of the expanded uncertainty on both sides of the
 * limit is conditional. Source: ILAC-G8:09/2019; ISO 14253-1:2017 (from memory).
 */
export const decisionRules = ['simple', 'guard-u95', 'guard-probability', 'four-outcomes'] as const
export type DecisionRule = (typeof decisionRules)[number]

export const conformityOutcomes = [
  'pass',
  'conditional-pass',
  'conditional-fail',
  'fail',
  'undecidable',
] as const
export type ConformityOutcome = (typeof conformityOutcomes)[number]
