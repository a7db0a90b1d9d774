import { exceptionReasonLength } from '../../../src/domain/parse-use-exception.ts'

/** What was measured with an instrument that was found out of tolerance, and the answers. */
export const touchedWords = {
  title: (number: string) => `Measured with ${number} while in doubt`,
  lead: (foundOn: string) =>
    `On ${foundOn} a calibration found this instrument beyond its tolerance, or left it so. What it was used for while it was not known to be good may be wrong.`,
  since: (from: string) => `From ${from}, when it was last known to be good`,
  sinceEver: 'Since it was first used, for no earlier calibration left it good',
  untilFound: (to: string) => `up to ${to}, when it was found beyond; both days included.`,
  untilGood: (to: string) => `up to ${to}, when a calibration left it good; both days included.`,
  untilNow: 'up to now: no calibration has left it good since.',
  instrument: 'Back to the instrument',
  error: 'Error found',
  errorLeft: 'Error left',
  calibration: 'Calibration',
  window: 'Days in doubt',
  open: 'Still without an answer',
  none: 'Nothing was measured with it in these days',
  noneText: 'No record is in doubt by this calibration.',
  cautionTitle: 'A seal may run on a wrong figure',
  caution:
    'Work out from the error found how far each figure may be off before you say that it stands. Where a released seal may not keep its limit, tell the customer before it is run.',
  caption: 'Records in doubt, oldest use first',
  columns: {
    record: 'Record',
    order: 'Work order',
    value: 'Result',
    certificates: 'Certificates',
    answer: 'Last answer',
  },
  kinds: {
    'flatness-reading': 'Flatness reading',
    'static-test': 'Static test',
    'measured-value': 'Measured value',
    'wear-track': 'Worn track',
    'spring-check': 'Springs',
  },
  noLoad: 'no load',
  record: (kind: string, id: number) => `${kind} ${id}`,
  replaced: 'replaced since',
  noCertificate: 'none',
  unanswered: 'Not answered yet',
  answers: {
    stands: 'Stands',
    repeat: 'Measure again',
    'withdraw-certificate': 'Withdraw the certificate',
  },
  details: {
    stands: 'The error found changes nothing: say why.',
    repeat: 'The figure no longer speaks for the seal: with another instrument.',
    'withdraw-certificate':
      'What was certified can’t be upheld. The decision is kept here; the customer is told by you.',
  },
  by: (name: string, at: string) => `${name}, ${at}`,
  formTitle: 'Your answer about the ticked records',
  answer: 'Your answer',
  reason: 'Why?',
  reasonHint: `Kept with each record. At least ${exceptionReasonLength.min} characters. A later answer is added, none is changed.`,
  submit: 'Record the answer',
  onlyInspector: 'An inspector answers.',
} as const

/** Better than the general sentences, by `field kind`. */
export const touchedSentences: Readonly<Record<string, string>> = {
  'records empty': 'Tick the records that your answer is about.',
  'records not-known': 'Tick records of the list.',
  'answer empty': 'Choose one answer.',
  'answer not-a-choice': 'Choose one answer.',
}
