import type { Characteristic } from '../../../src/domain/characteristic.ts'
import type { CountedResult } from '../../../src/domain/counted-results.ts'
import { acknowledgementLength, type ReleaseFault } from '../../../src/domain/release-faults.ts'
import { inSentence } from './in-sentence.ts'
import { tradeWords } from './trade.ts'

export const inspectionWords = {
  title: 'Inspection',
  lead: 'Work that is handed over waits here for someone who did not do it.',
  waiting: 'Waits for a decision',
  nothingWaits: 'Nothing waits',
  nothingWaitsText: 'When a technician hands an order over, it appears here.',
  refused: 'Refused, back at the bench',
  released: 'Released recently',
  due: 'due',
  handedOverBy: (name: string, at: string) => `Handed over by ${name}, ${at}`,
  yours: 'You lapped, tested or handed over this one: someone else releases it.',

  orderTitle: (number: string) => `Work order ${number}`,
  sealLine: (serial: string, arrangement: string, shaft: string) =>
    `Seal ${serial} · ${arrangement} · shaft ${shaft} mm`,
  toDecision: 'To the decision',
  toWorkOrder: 'Work order',
  customerOrder: 'Customer’s order',
  drawing: 'Drawing',
  receivedAt: 'Received',
  dueOn: 'Due',
  reasonForRemoval: 'Reason for removal',
  decontamination: 'Decontamination',
  limitSet: 'Limit set',
  limitSetName: (name: string, version: number, datedOn: string) =>
    `${name}, version ${version} of ${datedOn}`,

  results: 'Results beside their limits',
  others: (count: number) =>
    count === 1
      ? 'One more record: as found, or overtaken by a later one'
      : `${count} more records: as found, or overtaken by later ones`,
  otherColumns: {
    measured: 'Measured',
    result: 'Result',
    verdict: 'Verdict',
    instruments: 'Instruments on that day',
    recorded: 'Recorded',
  },
  asLeft: 'as left',
  asFound: 'as found',
  staticTest: 'Static test',
  missingFace: (face: string) => `${face}, flatness as left`,
  overtaken: 'read again later',
  overtakenTest: 'tested again later',
  notMeasured: 'Not measured',
  direction: (bands: string, directionDeg: number) => `${bands} at ${directionDeg}°`,
  bands: (text: string, hasSeveral: boolean) => (hasSeveral ? `bands: ${text}` : `bands ${text}`),
  angle: (deg: string) => `seen at ${deg}°`,
  soak: (min: string) => `soaked ${min} min`,
  temperature: (c: string) => `${c} °C`,
  readings: (typed: string, unit: string) => `read ${typed} ${unit}`,
  factor: (factor: string) => `k = ${factor}`,
  budgetIncomplete: 'Some sources are not known: the uncertainty is larger than shown.',
  recordedBy: (name: string, at: string) => `Recorded by ${name}, ${at}`,
  exception: (name: string, day: string, reason: string) =>
    `Used by an exception that ${name} allowed on ${day}: ${reason}`,
  conformance: (percent: string) => `Keeps the limit with a probability of ${percent}.`,
  risks: (accept: string, reject: string) =>
    `Risk of a wrong acceptance: ${accept}; of a wrong rejection: ${reject}.`,
  noRisk: 'none',
  improve: (source: string) => `What would have to improve first: ${source}.`,
  missing: (source: string) =>
    `Missing from the budget: ${source}. State the largest error or the calibration of the instrument, and measure again.`,
  incomplete: (sources: string) =>
    `Missing from the budget: ${sources}. The uncertainty is larger than shown, so no probability is stated.`,
  toBudget: 'Look at its uncertainty',
  toLimits: 'Look at the limits',
  concession: {
    title: 'Accepted by concession',
    summary: 'The customer takes it all the same',
    reason: 'Why can it be taken?',
    reasonHint: 'Printed on the certificate, at least 10 characters.',
    customerReference: 'The customer’s approval',
    customerReferenceHint: 'Number of their letter, order or message. It is printed too.',
    submit: 'Record the concession',
    notRecorded: 'The concession was not recorded yet:',
    recorded: (reference: string, name: string, at: string) =>
      `Customer’s approval ${reference}; recorded by ${name}, ${at}`,
  },
  doubtTitle: 'an instrument was found out of tolerance',
  doubt: (number: string, foundOn: string) =>
    `${number}, found on ${foundOn}. Say on its page whether the records made with it stand.`,
  atMost: (text: string) => `≤ ${text}`,
  atLeast: (text: string) => `≥ ${text}`,
  beyond: (percent: string) => `${percent} of what is known lies beyond`,
  within: (seconds: number) => `in a hold of at least ${seconds} s`,
  volumeAtMost: (litres: number) => `in at most ${litres} L`,
  startAtLeast: (kPaGauge: string) => `started at ${kPaGauge} kPa gauge or above`,
  pressures: (start: string, end: string) => `${start} to ${end} kPa absolute`,
  conditions: (volume: string, seconds: string, from: string, to: string) =>
    `${volume} L, ${seconds} s, ${from} to ${to} °C`,
  dueUntil: (day: string) => `to ${day}`,
  wasDue: (day: string) => `was due ${day}`,
  noteOf: (note: string) => `Note: ${note}`,

  corrections: 'Corrections',
  correctionColumns: {
    what: 'What',
    was: 'Was',
    became: 'Became',
    why: 'Why',
    by: 'By',
  },
  noCorrections: 'Nothing was corrected.',
  recordedAt: (at: string) => `recorded ${at}`,

  course: 'Course of the order',
  courseColumns: { at: 'When', step: 'Step', by: 'By', reason: 'Reason or note' },
  components: 'The five components',
  componentColumns: { kind: 'Component', material: 'Material', diameters: 'Ø outer × inner, mm' },

  decision: 'Decision',
  decided: (outcome: string, name: string, at: string) => `${outcome} by ${name}, ${at}`,
  notHandedOver: 'Not handed over: there is nothing to decide yet.',
  managerLooks: 'An inspector decides. You see what they see.',
  inTheWay: 'This can’t be released',
  outOfCalibration: 'Out of calibration on the day of use',
  outOfCalibrationText: (numbers: string) =>
    `${numbers}. To release all the same, say below why the results stand. The sentence is printed on the certificate.`,
  outcome: 'Your decision',
  release: 'Release',
  releaseDetail: 'The certificate is issued at once and can’t be taken back.',
  refuse: 'Refuse',
  refuseDetail: 'The order goes back to the bench with your reason.',
  reason: 'In your words',
  reasonHint: 'Needed when you refuse. On a release it is printed on the certificate.',
  password: 'Your password',
  passwordHint: 'It confirms that the decision is yours.',
  sign: 'Sign the decision',
  certificate: (number: string) => `Certificate ${number}`,
  choose: 'Choose release or refuse.',
  notSigned: 'This was not signed yet:',
  notDone: 'Nothing was recorded',
  youWrote: (words: string) => `You wrote: ${words}`,
  seeBelow: 'What was decided stands below.',
} as const

type ResultFails = Extract<ReleaseFault, { id: 'result-fails' }>

/** Why an order can't be released, one sentence a rule. */
export function releaseFaultSentence(fault: ReleaseFault): string {
  switch (fault.id) {
    case 'not-inspector':
      return 'Only an inspector releases.'
    case 'lapped-or-tested':
      return 'You lapped, tested or handed over this order, so someone else must release it: EN 10204:2004, type 3.1, asks that whoever releases is independent of the manufacturing department.'
    case 'not-handed-over':
      return 'The order is not handed over.'
    case 'already-decided':
      return `This hand-over was decided already, by ${fault.byName}.`
    case 'something-missing':
      return 'Something required is not recorded. Refuse, and say what is missing.'
    case 'result-fails':
      return `${resultTitle(fault, fault.characteristic)}: ${failureText(fault)}`
    case 'instrument-in-doubt':
      return `Found out of tolerance since: ${fault.numbers.join(', ')}. Say on the page of the instrument whether the records made with it stand.`
    case 'instrument-not-acknowledged':
      return `Out of calibration on the day of use: ${fault.numbers.join(', ')}. Say in at least ${acknowledgementLength.min} characters why the results stand.`
  }
}

function failureText({ verdict, why }: ResultFails): string {
  if (verdict === 'undecidable') {
    return 'this set-up cannot decide. Measure it better, or record a concession of the customer.'
  }
  if (why === 'unreadable') return 'the face can’t be read. Refuse, so that it is read again.'
  return 'the result fails. It is reworked, or taken by a recorded concession of the customer.'
}

/** A result that counts, by where it was measured and what: `Rotating face, flatness as left`. */
export function resultTitle(
  place: Pick<CountedResult, 'componentKind' | 'section'>,
  characteristic: Characteristic,
): string {
  const { componentKind, section } = place
  const what = tradeWords.characteristic[characteristic]
  if (section !== null) {
    const where = `${inspectionWords.staticTest}, ${tradeWords.section[section].toLowerCase()}`
    return `${where}, ${inSentence(what)}`
  }
  if (componentKind === null) return `${what} ${inspectionWords.asLeft}`
  return `${tradeWords.componentKind[componentKind]}, ${inSentence(what)} ${inspectionWords.asLeft}`
}
