/** Words that every recording of a measurement shares. */
export const recordingWords = {
  limit: 'Limit',
  limitsTitle: 'Limits of this order',
  limitSet: 'Limit set',
  /** What the button of a recording says. */
  submit: 'Record',
  noLimitShort: 'no limit in the set',
  dueOn: (day: string) => `due ${day}`,
  overdueSince: (day: string) => `overdue, was due ${day}`,
  withdrawn: (numbers: string) => `Withdrawn, not to be used: ${numbers}.`,
  noInstrument: 'None is in the list. An inspector or the manager adds instruments.',
  choose: 'Choose one',
  refused: (number: string, status: string) =>
    `${number}: ${status}. Nothing can be recorded with it unless an inspector allows an exception.`,
  allowed: (number: string, status: string, name: string) =>
    `${number}: ${status}. Used by an exception that ${name} allowed, printed on the certificate.`,
  uncertainty: {
    label: 'Uncertainty',
    factor: (factor: string) => `± is the expanded one, k = ${factor}`,
    unknown: 'not known: the papers of the instruments say nothing of it',
    largest: 'Most of it comes from',
    leftOut: 'Left out, nobody stated it',
  },
  replaces: 'This replaces the record',
  reason: 'Why is it replaced?',
  reasonHint: 'The earlier record stays in the history, with this reason.',
} as const
