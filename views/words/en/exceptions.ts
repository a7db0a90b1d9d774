import { exceptionReasonLength } from '../../../src/domain/parse-use-exception.ts'
import { exceptionDaysAtMost } from '../../../src/domain/parse-use-exception-answer.ts'

/** Asking an inspector for an instrument that may not be used, and the answer. */
export const exceptionsWords = {
  askFor: (number: string) => `Ask an inspector for an exception for ${number}`,
  title: 'Ask for an exception',
  lead: 'It holds for one instrument and this order alone. Until an inspector has allowed it, nothing is recorded with the instrument.',
  cautionTitle: 'An exception does not make a reading right',
  caution:
    'Take another instrument if there is one. What was read by an exception, and the inspector’s reason, is printed on the certificate. It makes nothing safe either: no instrument is taken beyond what it is built for, and a gauge that may be wrong is never alone in watching a pressure. The site rules and local codes come first.',
  instrument: 'Instrument',
  choose: 'Choose one',
  option: (number: string, name: string, standing: string) => `${number} ${name} · ${standing}`,
  fault: 'What stands against it',
  faults: {
    overdue: 'Overdue for calibration',
    'never-calibrated': 'No calibration on record',
    'left-beyond': 'Left beyond its tolerance by its last calibration',
    withdrawn: 'Withdrawn from use',
    'out-of-range': 'The reading lies outside its range',
  },
  reason: 'Why can’t another be taken?',
  reasonHint: `The inspector reads this. At least ${exceptionReasonLength.min} characters.`,
  submit: 'Ask an inspector',

  openTitle: 'Asked for: an instrument in spite of a fault',
  asked: (name: string, at: string) => `Asked by ${name}, ${at}`,
  ownRequest: 'You asked for this one: another inspector answers.',
  answer: 'Your answer',
  answers: { allowed: 'Allow', declined: 'Decline' },
  allowedDetail: 'For this order, until the day below.',
  declinedDetail: 'Another instrument is taken, or this one is calibrated first.',
  validUntil: 'Last day of use',
  validUntilHint: `Today at the earliest, ${exceptionDaysAtMost} days from now at the latest (our own choice).`,
  answerReason: 'Why?',
  answerReasonHint: `Printed on the certificate. At least ${exceptionReasonLength.min} characters.`,
  submitAnswer: 'Record the answer',

  sectionTitle: 'Exceptions for instruments',
  toAnswers: 'It waits on the inspection page',
  columns: {
    instrument: 'Instrument',
    state: 'Answer',
    asked: 'Why it was asked for',
    answered: 'What was answered',
  },
  states: { open: 'Not answered yet', allowed: 'Allowed', declined: 'Declined' },
  until: (day: string) => `until ${day}`,
  by: (name: string, at: string) => `${name}, ${at}`,
} as const

/** Better than the general sentences, by `field kind`. */
export const exceptionSentences: Readonly<Record<string, string>> = {
  'instrumentId empty': 'Choose the instrument.',
  'instrumentId not-a-number': 'Choose an instrument of the list.',
  'instrumentId not-known': 'Choose an instrument of the list.',
  'fault empty': 'Choose what stands against the instrument.',
  'fault not-a-choice': 'Choose what stands against the instrument.',
  'answer empty': 'Choose: allow or decline.',
  'answer not-a-choice': 'Choose: allow or decline.',
  'validUntil empty': 'Enter the last day on which it may be used.',
  'validUntil below': 'That day is over. Today is the earliest.',
  'validUntil above': `That is too long: ${exceptionDaysAtMost} days from now at the latest.`,
}
