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
      'Passes within the limit, whatever the uncertainty. At the limit the risk of a wrong verdict is up to 50 % (ILAC-G8:09/2019).',
    'guard-u95':
      'Passes where the limit is kept by the expanded uncertainty U, else fails. The risk of a wrong pass is below 2.5 % (ILAC-G8:09/2019).',
    'guard-probability':
      'Passes where conformity is proven with the stated probability, fails where the opposite is, and cannot decide between. At 95 % the risk of a wrong verdict is at most 5 % (ISO 14253-1:2017, from memory).',
    'four-outcomes':
      'Passes or fails where the limit is kept or missed by more than U, with a risk below 2.5 %. Nearer to the limit the verdict is conditional, with a risk of up to 50 % (ILAC-G8:09/2019).',
  } satisfies Record<DecisionRule, string>,
} as const
