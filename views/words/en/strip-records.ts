import type { SpringCaution } from '../../../src/domain/answer-spring.ts'
import { stripCommonWords } from './strip-common.ts'

/** The worn track on a face: its form, its lines, and what it says beside the surveys. */
export const wearTrackWords = {
  ...stripCommonWords,
  act: 'Worn track',
  title: 'Worn track',
  correctionTitle: 'Correct a worn track',
  cautionTitle: 'sharp edges, brittle rings and residues',
  caution: [
    'Read the face before it is cleaned or lapped: what was worn tells more than what is left.',
    'Worn edges cut, and carbon and ceramic rings break when they are knocked: gloves, a soft place to lay them.',
    'Residues of what was sealed may harm. Site rules and safety data sheets come first.',
  ],
  face: 'Which face carries the track?',
  faceHint: 'As a rule the wider, harder one.',
  widthsTitle: 'How wide?',
  nose: 'Width of the nose',
  noseHint: 'Of the narrower face that ran on it.',
  width: (index: number) => (index === 1 ? 'Width of the track' : `Again, place ${index}`),
  widthHint: 'Where it is widest, and at one or two more places.',
  offsetTitle: 'Does it lie off the middle?',
  offset: 'Middle of the track off by',
  offsetHour: 'Towards',
  offsetHint: 'Seen from the face, the mark or the drive slot at 12 o’clock.',
  noHour: 'Not off the middle',
  hour: (hour: number) => `${hour} o’clock`,
  ask: 'Enter the face, the nose and the track to see how far a face moved.',
  movement: 'Movement in service',
  narrowerBy: 'Track narrower than the nose',
  widths: (track: string, nose: string) => `track ${track} mm, nose ${nose} mm`,
  movementText: (um: string, doubt: string) => `movement ${um} µm${doubt}`,
  narrowerText: (um: string) => `narrower than the nose by ${um} µm`,
  doubt: (um: string) => ` ± ${um} µm (k = 2)`,
  doubtSign: (um: string) => `± ${um}`,
  found: (least: string, most: string) =>
    least === most ? `surveys found ${least} µm` : `surveys found ${least} to ${most} µm`,
  finding:
    'This is a finding, not a movement: the faces were distorted, or did not close over their whole width.',
  offsetText: (mm: string, hour: number | null) =>
    hour === null
      ? `off the middle by ${mm} mm`
      : `off the middle by ${mm} mm towards ${hour} o’clock`,
  drawing: 'Worn track of a face beside the nose that made it',
  faults: {
    'componentId empty': 'Choose the face that carries the track.',
    'componentId not-known': 'This is not a face of the seal. Choose one of its faces.',
    'trackWidths empty': 'Enter the width of the track.',
    'widthMm empty': 'Enter the width of the track.',
    'noseWidthMm empty': 'Enter the width of the nose that made the track.',
    'offsetHour empty': 'Say which way the track lies off the middle.',
    'offsetMm empty': 'Say how far the track lies off the middle.',
  } as Readonly<Record<string, string>>,
} as const

/** Springs of the bench. */
export const springCheckWords = {
  ...stripCommonWords,
  act: 'Springs',
  title: 'Springs',
  correctionTitle: 'Correct a check of springs',
  cautionTitle: 'springs under load',
  caution: [
    'A compressed spring lets go at once: cover it, keep face and hands out of its way, and let it out slowly.',
    'A bellows is not pressed beyond its own solid length, and never twisted.',
    'Use a press that stops by itself. Site rules and the maker’s instructions come first.',
  ],
  whichTitle: 'Which springs?',
  condition: 'How were they?',
  count: 'Springs that press together',
  countHint: 'Of one kind, all round the seal. A bellows or a wave spring is one.',
  lengthsTitle: 'How long?',
  freeLength: 'Free length',
  freeLengthHint: 'Without load; of several, the shortest.',
  newLength: 'Free length of a new one',
  newLengthHint: 'By its drawing: the difference is its set.',
  workingLength: 'Working length',
  workingLengthHint: 'As it stands in the seal.',
  solidLength: 'Solid length',
  solidLengthHint: 'Coils closed, or the shortest that the seal allows.',
  loadsTitle: 'How stiff?',
  loadsHint:
    'Press one spring to two lengths or more and read the load, or enter the rate that its drawing states. One load is enough to go by its free length.',
  loadLength: (index: number) => `Length ${index}`,
  load: (index: number) => `Load ${index}`,
  rate: 'Rate of one spring, as stated',
  rateUnit: 'N/mm',
  ask: 'Enter free and working length, and how stiff one spring is, to see what they press with.',
  loadTitle: 'Load at the working length',
  noRate: 'How stiff they are is not known, so no load follows.',
  cautions: {
    'not-straight':
      'The loads do not lie on a line: a residual is above a twentieth of the largest load. Read again; coils that touch stiffen a spring.',
    'free-length-differs':
      'The line through the loads comes to nothing at another length than the free one that was read: by more than a twentieth of the largest load.',
    'beyond-free-length':
      'By its loads the spring presses with nothing at the working length already.',
  } satisfies Record<SpringCaution, string>,
  shareSource: 'A twentieth is common practice, without a source.',
  springs: (count: number) => (count === 1 ? 'one spring' : `${count} springs`),
  lengths: (free: string, working: string) => `free ${free} mm, working ${working} mm`,
  rateText: (rate: string, isStated: boolean) =>
    `${rate} N/mm each (${isStated ? 'stated' : 'from loads'})`,
  loadText: (n: string, doubt: string) => `presses with ${n} N${doubt}`,
  doubt: (n: string, k: string) => ` ± ${n} N (k = ${k})`,
  doubtSign: (n: string) => `± ${n}`,
  pressure: (mpa: string) => `${mpa} MPa on the face`,
  travel: (mm: string) => `${mm} mm of travel left to solid`,
  perMm: (n: string) => `${n} N for a mm of end play, or of height lapped off`,
  set: (mm: string) => `shorter than a new one by ${mm} mm`,
  longer: (mm: string) => `longer than a new one by ${mm} mm`,
  faults: {
    'condition empty': 'Say whether these are the springs as found or as they go in.',
    'freeLengthMm empty': 'Enter the free length.',
    'workingLengthMm empty': 'Enter the working length.',
    'workingLengthMm above': 'At its working length a spring is no longer than free.',
    'solidLengthMm above': 'A spring at its working length is not shorter than solid.',
    'loads load-not-rising':
      'The load has to rise as the spring gets shorter, and be read at different lengths.',
    'rateNPerMm one-of-two': 'Enter loads or the stated rate, not both.',
    'lengthMm empty': 'Enter the length that belongs to this load.',
    'loadN empty': 'Enter the load that belongs to this length.',
  } as Readonly<Record<string, string>>,
} as const

/** What stands over all of them on order, evidence and certificate. */
export const stripRecordsWords = {
  title: 'Worn tracks, springs and assembly',
  none: 'No worn track, spring or assembly recorded',
  tracks: 'Worn tracks as found',
  springs: 'Springs',
  assembly: 'Assembly',
  conditions: { 'as-found': 'as found', 'as-left': 'as left' },
  correct: (what: string, at: string) => `Correct: ${what}, recorded ${at}`,
  heights: {
    title: 'Face heights',
    none: 'No face height read yet',
    text: (face: string, mm: string, condition: string) => `${face}: ${mm} mm, ${condition}`,
  },
  certificate: {
    heading: 'Worn tracks, springs and assembly',
    columns: ['What', 'Read or set', 'What follows'],
    note: 'Read on the bench. Loads hold for springs alike, in the straight part of their line, without friction of the secondary seals. None of these is judged by the limit set, and none blocks a release.',
  },
  drawing: {
    title: 'Load of the springs against their length',
    lengthAxis: 'Length, mm',
    loadAxis: 'Load, N',
    free: (mm: string) => `free ${mm}`,
    working: (mm: string) => `working ${mm}`,
    solid: (mm: string) => `solid ${mm}`,
    load: (n: string) => `${n} N`,
    design: (n: string) => `asked for: ${n} N`,
  },
} as const
