import { acknowledgementLength, type ReleaseFault } from '../../../src/domain/release-faults.ts'
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
  resultColumns: {
    measured: 'Measured',
    result: 'Result against its limit',
    verdict: 'Verdict',
    limit: 'Limit and its source',
    instruments: 'Instruments on that day',
    recorded: 'Recorded',
  },
  flatness: 'Flatness',
  drop: 'Pressure drop',
  leak: 'Leak rate',
  staticTest: 'Static test',
  overtaken: 'read again later',
  overtakenTest: 'tested again later',
  notMeasured: 'Not measured',
  direction: (bands: string, directionDeg: number) => `${bands} at ${directionDeg}°`,
  bands: (text: string, hasSeveral: boolean) => (hasSeveral ? `bands: ${text}` : `bands ${text}`),
  angle: (deg: string) => `seen at ${deg}°`,
  soak: (min: string) => `soaked ${min} min`,
  temperature: (c: string) => `${c} °C`,
  uncertainty: (text: string, factor: number) => `± ${text} µm (k = ${factor})`,
  atMost: (text: string) => `≤ ${text}`,
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
      return `${resultName(fault)}: the result fails. What fails is reworked, not released.`
    case 'instrument-not-acknowledged':
      return `Out of calibration on the day of use: ${fault.numbers.join(', ')}. Say in at least ${acknowledgementLength.min} characters why the results stand.`
  }
}

function resultName({ faceKind, section, characteristic }: ResultFails): string {
  const place =
    faceKind !== null
      ? [tradeWords.faceKind[faceKind]]
      : section !== null
        ? [inspectionWords.staticTest, tradeWords.section[section].toLowerCase()]
        : []
  return [...place, tradeWords.characteristic[characteristic].toLowerCase()].join(', ')
}
