import type { AgreedRule } from '../../../src/domain/agreed-rule.ts'
import type { Characteristic } from '../../../src/domain/characteristic.ts'
import type { DoubtAnswer } from '../../../src/domain/doubt.ts'
import type { PrintedUnitId } from '../../../src/domain/printed-unit.ts'
import type { UseFault } from '../../../src/domain/use-exception.ts'
import { asSentence } from './as-sentence.ts'
import { decisionWords } from './decision.ts'
import { tradeWords } from './trade.ts'

/** The parts of the certificate that say how results were decided, and how sure that is. */
export const certificateDecisionWords = {
  heading: 'What was decided, and how sure it is',
  intro:
    'Each result that counts, with its expanded uncertainty, against the limit as it holds for this seal. The bar shows the result with U either way; the hatched part is where the rule does not accept.',
  columns: ['Result', 'Value, limit that holds, verdict', 'Against the limit'],
  characteristics: tradeWords.characteristic satisfies Readonly<Record<Characteristic, string>>,
  units: {
    um: 'µm',
    mm: 'mm',
    kPa: 'kPa',
    paM3PerS: 'Pa·m³/s',
    gPerH: 'g/h',
    mlPerH: 'mL/h',
    mlPerM3: 'mL/m³',
  } satisfies Readonly<Record<PrintedUnitId, string>>,
  factor: (factor: string) => `k = ${factor}`,
  noUncertainty: 'U not known',
  unreadable: 'unreadable',
  conforms: (percent: string) => `conforms with ${percent} %`,
  beyond: (percent: string) => `${percent} % of what is known lies beyond`,
  risk: (percent: string) => `risk of this verdict: ${percent} %`,
  improve: (source: string) => `most uncertain: ${source}`,
  missing: (source: string) => `missing from the budget: ${source}`,
  incomplete: (sources: string) =>
    `missing from the budget: ${sources}; U is larger than stated, and no probability is stated`,
  noLimit: 'no limit',
  notWeighed: 'not weighed: without an uncertainty and a limit there is nothing to draw',
  notWeighedInFull: 'not weighed: a part of its uncertainty is not known',
  conceded: 'accepted by concession, see below',
  pictureAlternative: (value: string, limit: string) => `${value} against ${limit}`,
  by: (method: string, instruments: string, name: string) =>
    `${method}; ${instruments}; by ${name}`,

  concessions: {
    heading: 'Concessions',
    intro:
      'The agreed rule does not accept these results, or could not decide them. The customer accepts them all the same.',
    item: (parts: {
      readonly what: string
      readonly value: string
      readonly limit: string
      readonly reason: string
      readonly reference: string
      readonly by: string
      readonly at: string
    }) =>
      `${parts.what}: ${parts.value}, limit ${parts.limit}. Reason: ${asSentence(parts.reason)} Approval of the customer: ${asSentence(parts.reference)} Recorded by ${parts.by}, ${parts.at}.`,
  },
  exceptions: {
    heading: 'Instruments used by exception',
    intro: 'An exception does not make a reading right; it says who allowed it, and why.',
    item: (parts: {
      readonly number: string
      readonly fault: string
      readonly reason: string
      readonly by: string
      readonly at: string
    }) =>
      `${parts.number}, ${parts.fault}. Reason: ${asSentence(parts.reason)} Allowed by ${parts.by}, ${parts.at}.`,
    faults: {
      overdue: 'calibration overdue',
      'never-calibrated': 'no calibration on record',
      'left-beyond': 'left beyond its tolerance by its calibration',
      withdrawn: 'withdrawn from use',
      'out-of-range': 'used out of its range',
    } satisfies Readonly<Record<UseFault, string>>,
  },
  doubts: {
    heading: 'Instruments that a calibration found or left out of tolerance',
    item: (number: string, day: string, answer: string, reason: string, by: string) =>
      `${number}, by its calibration of ${day}: ${answer}. Reason: ${asSentence(reason)} By ${by}.`,
    answers: {
      stands: 'the result stands',
      repeat: 'the result is to be repeated',
      'withdraw-certificate': 'the certificate is to be withdrawn',
    } satisfies Readonly<Record<DoubtAnswer, string>>,
    unanswered: 'not decided yet',
  },
  rule: {
    names: decisionWords.rule,
    sentences: decisionWords.ruleSentence,
    tooLarge: decisionWords.tooLarge,
    tooLargeInSet: decisionWords.tooLargeInSet,
    unknown: decisionWords.unknown,
    stated: (name: string, sentence: string) => `${name}. ${sentence}`,
    probability: (probability: string) => `Stated probability of conformity: ${probability}.`,
    scopes: {
      order: 'Agreed for this order before measuring',
      customer: 'Agreed with the customer before measuring',
      house: 'The rule of the workshop; no other was agreed',
    } satisfies Readonly<Record<AgreedRule['scope'], string>>,
    agreed: (scope: string, reference: string) =>
      reference === '' ? `${scope}.` : `${scope}: ${reference}.`,
    applied:
      'It was applied before rounding to every result in this certificate that has a limit it can be held against. Beside each verdict that rests on a whole uncertainty stand the probability of conformity and the risk; they take what is known of the result as a normal distribution (JCGM 106, from memory).',
  },
  budgets: {
    heading: 'Uncertainty budgets',
    intro:
      'As kept with each result: what adds to its uncertainty, in the unit of the result. Degrees of freedom: ∞ where a source is known beforehand.',
    columns: ['Source', 'Standard uncertainty', 'Contribution', 'Degrees of freedom'],
    distribution: tradeWords.distribution,
    combined: 'Combined',
    notApplicable: '–',
    infinite: '∞',
    total: (u: string, factor: string, expanded: string, unit: string) =>
      `u = ${u} ${unit}, k = ${factor}, U = ${expanded} ${unit}`,
    leftOut: (sources: string) => `Left out, because nobody stated it: ${sources}.`,
  },
} as const
