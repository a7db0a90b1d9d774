import type {
  ConformityOutcome,
  DecisionRule,
} from '../../../src/science/acceptance/decision-rule.ts'
import { tradeWords } from './trade.ts'

const { verdict } = tradeWords

/** What the rules of decision are called, what each means with its risk, and what comes of it. */
export const decisionWords = {
  outcome: {
    pass: verdict.pass,
    'conditional-pass': verdict['conditional-pass'],
    'conditional-fail': verdict['conditional-fail'],
    fail: verdict.fail,
    undecidable: verdict.undecidable,
  } satisfies Record<ConformityOutcome, string>,
  rule: {
    simple: 'Simple acceptance',
    'guard-u95': 'Guard band by U',
    'guard-probability': 'Guard band for a stated probability',
    'four-outcomes': 'Four outcomes',
  } satisfies Record<DecisionRule, string>,
  ruleSentence: {
    simple:
      'Passes within the limit and fails beyond it; nothing is taken off for the uncertainty. At the limit the risk of a wrong verdict is up to 50 % (ILAC-G8:09/2019).',
    'guard-u95':
      'Passes where the limit is kept by at least the expanded uncertainty U, and fails where it is not. The risk of a wrong pass is below 2.5 % (ILAC-G8:09/2019).',
    'guard-probability':
      'Passes where conformity is proven with the stated probability, fails where the opposite is, and cannot decide between. At 95 % the risk of a wrong verdict is at most 5 % (ISO 14253-1:2017, from memory).',
    'four-outcomes':
      'Passes or fails where the limit is kept or missed by more than U, with a risk below 2.5 %. Nearer to the limit the verdict is conditional, with a risk of up to 50 % (ILAC-G8:09/2019).',
  } satisfies Record<DecisionRule, string>,
  tooLarge: (percent: string) =>
    `Where U takes up more than ${percent} of the limit (of the span between two limits), nothing is decided, unless the result lies beyond a limit by more than U: then it fails.`,
  tooLargeInSet:
    'Where U takes up more of the limit than the limit set allows, nothing is decided, unless the result lies beyond a limit by more than U: then it fails.',
  unknown: {
    simple:
      'A result whose uncertainty is not known is compared by its value alone. So is one that lacks that of an instrument, unless what is known takes up too much already; no probability is stated for it.',
    'guard-u95':
      'A result whose uncertainty is not known, or lacks that of an instrument, is not accepted.',
    'guard-probability':
      'A result whose uncertainty is not known, or lacks that of an instrument, is not decided.',
    'four-outcomes':
      'A result whose uncertainty is not known, or lacks that of an instrument, is not decided.',
  } satisfies Record<DecisionRule, string>,
} as const
