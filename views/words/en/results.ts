/** The page of one result: its uncertainty, what it was compared with, and how sure that is. */
export const resultsWords = {
  link: 'How it came about',
  linkWith: (factor: string) => `k = ${factor}: the budget`,
  /** For who hears the link alone; begins with what is seen. */
  linkLabel: (text: string, what: string, at: string) => `${text}. ${what}, ${at}`,
  title: (characteristic: string, on: string | null) =>
    on === null ? characteristic : `${characteristic}: ${on.toLowerCase()}`,
  back: { order: 'To the work order', seal: 'To the seal' },
  factor: (factor: string) => `The value after ± is the expanded uncertainty, k = ${factor}.`,
  replaced: 'This record was replaced by a newer one. It stays to be read.',
  recorded: (name: string, at: string, method: string) =>
    `Recorded by ${name} on ${at}. Method: ${method}.`,
  note: (note: string) => `Note: ${note}`,
  unreadable: 'No bands could be read, so there is no figure and no uncertainty.',

  budgetTitle: 'Where the uncertainty comes from',
  noBudget: 'No uncertainty is known for this result.',
  olderThanBudgets:
    'This record is older than uncertainty budgets: none was kept with it, and none is made up now.',
  nothingKnown:
    'Neither the papers of the instruments nor who recorded it say how far off their readings may be. Enter what their calibration certificates say, and record the next result.',
  table: {
    caption: (unit: string) => `Budget, contributions in ${unit}`,
    source: 'Source',
    value: 'Standard uncertainty',
    distribution: 'Distribution',
    sensitivity: 'Sensitivity',
    contribution: 'Contribution',
    degrees: 'Degrees of freedom',
    combined: 'Combined',
    infinite: 'infinitely many',
  },
  coverage: {
    known: (factor: string) =>
      `The expanded uncertainty is ${factor} times the standard uncertainty: it covers about 95 % of the values that the truth may have.`,
    effective: (factor: string, degrees: string) =>
      `Some parts rest on few readings. By the Welch–Satterthwaite formula the whole has ${degrees} effective degrees of freedom, and Student’s t gives the coverage factor ${factor} for about 95 %.`,
  },
  largest: (source: string, percent: string) =>
    `Most comes from: ${source}, ${percent} of the variance. To be surer, begin there.`,
  notCorrected:
    'The readings are not corrected for the error of their instrument. It has a line of its own, as large as it may be to either side; how well a calibration knew it is another.',
  lacks: (sources: string) =>
    `How far off an instrument may be is not known: ${sources}. To be surer, begin there; until then the uncertainty is too small.`,
  leftOutTitle: 'Left out, because nobody stated it',
  leftOutNote: 'With these the uncertainty would be larger.',

  decisionTitle: 'What it was compared with',
  falseAccept: 'Risk of accepting what is beyond the limit',
  falseReject: 'Risk of rejecting what keeps the limit',
  conformance: 'Probability that it keeps the limit',
  share: 'Expanded uncertainty against the limit',
  notCompared: 'Without an uncertainty and a limit there is no probability to state.',

  instrumentsTitle: 'Instruments on the day',
  due: (day: string) => `due ${day}`,
  certificateOf: (number: string) => `Certificate: ${number}`,
  noCertificate: 'none on record',
  exception: (name: string, reason: string) => `Used by exception of ${name}: ${reason}`,

  trials: {
    title: 'The same by trials',
    lead: (count: string) =>
      `Draws ${count} times what every quantity may have been, and computes the result from each. It shows whether the budget, which takes the formula as straight, holds.`,
    seed: 'Seed',
    seedHint: 'The same seed gives the same trials.',
    run: (count: string) => `Run ${count} trials`,
    noModel: 'No formula was kept with this result, so there is nothing to try.',
    drawing: 'How often each result came out, with both intervals',
    linear: 'Budget',
    shortest: 'Trials, shortest interval',
    symmetric: 'Trials, as much below as above',
    interval: (low: string, high: string) => `${low} to ${high}`,
    coverage: (percent: string) =>
      `Each interval covers ${percent}. The dashed curve is what the budget takes the distribution for.`,
    failed:
      'In some trials the formula gave no number: what is stated is too uncertain for it. Look at the largest part of the budget.',
    agrees: (difference: string, tolerance: string) =>
      `The budget holds: its ends differ from those of the trials by at most ${difference}, within ${tolerance} (JCGM 101, clause 8, two digits).`,
    differs: (difference: string, tolerance: string) =>
      `The budget does not hold to two digits: its ends differ from those of the trials by up to ${difference}, more than ${tolerance} (JCGM 101, clause 8). Go by the interval of the trials.`,
  },
} as const
