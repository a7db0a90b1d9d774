import type { CombinationRefusal } from '../../../src/domain/combination-refusal.ts'
import type { NoDifference } from '../../../src/domain/compare-whole-faces.ts'
import type { FaceFigureName } from '../../../src/domain/face-figure-changes.ts'
import type { TurnStanding } from '../../../src/domain/face-turn.ts'

/** Two readings of one face side by side, and their combination. */
export const wholeFacesWords = {
  title: 'Two readings of a face',
  lead: 'Side by side on one scale, held against each other, and, where they are of one state of the face, combined.',
  link: 'Compare two readings of a face',
  faces: 'Faces',
  chooseTitle: 'Which two?',
  first: 'One reading',
  second: 'The other reading',
  option: (condition: string, at: string, how: string, flatness: string) =>
    `${condition}: ${flatness}, ${at}, ${how}`,
  afterCycle: (condition: string, number: number) => `${condition} after lap cycle ${number}`,
  lay: 'How the later one is laid on the earlier',
  layUsual: 'As usual: turned until the forms fit, but not across a lap',
  lays: {
    'by-form': 'Turned until the forms fit',
    'as-taken': 'As it was photographed',
  },
  layHint:
    'As photographed is true only where the ring lay the same way round under the flat both times.',
  show: 'Compare',
  none: 'No face of this order was read whole yet',
  noneText: 'Readings from a photograph, from marks or from a grid of lines can be compared.',
  one: 'This face was read whole once',
  oneText: 'Read it a second time, turned a quarter under the flat: then the two can be compared.',
  same: 'Choose two different readings.',
  sideTitle: 'Side by side',
  scale: (low: string, high: string, step: string) =>
    `Both are drawn on one scale, from ${low} to ${high} µm, with a line every ${step} µm.`,
  earlier: 'Earlier',
  later: 'Later',
  laidTurned: (deg: string) => `Drawn turned by ${deg}° counter-clockwise, to lie on the earlier.`,
  laidUpsideDown:
    'Its sign is open: drawn upside down against its record, which is how it fits the other one.',
  openResult: 'Open this result',
  turn: {
    found: (deg: string, likeness: string, rival: string) =>
      `Turned by ${deg}° they are most alike: likeness ${likeness}, at most ${rival} at any turn more than 20° away.`,
    guess: (deg: string, likeness: string, rival: string) =>
      `The turn of ${deg}° is only a guess: at another turn, or upside down, they are nearly as alike (likeness ${likeness} against ${rival}). A saddle, for one, fits at two turns.`,
    'no-mark': (_deg: string, likeness: string) =>
      `How one was turned against the other can’t be told: what differs around the face is within the uncertainty of the pictures, as of a dish, which looks the same at any turn. It was not turned${likeness === '' ? '' : `; likeness ${likeness}`}.`,
    unlike: (_deg: string, likeness: string) =>
      `No turn makes one form of the other: the best likeness is ${likeness}. Was it the same face, and nothing in between?`,
  } satisfies Readonly<
    Record<TurnStanding, (deg: string, likeness: string, rival: string) => string>
  >,
  asTaken:
    'Neither was turned. What follows is true if the ring lay the same way round under the flat both times.',
  beforeAfter:
    'Before and after: the face may have another form, so nothing was turned. What follows is true if the ring lay the same way round under the flat both times.',
  beforeAfterTurned:
    'Before and after: the face may have another form, and the turn that fits best need not be the true one.',
  differenceTitle: 'Difference',
  differenceOf: 'Earlier less later, without tilt between them. Lines of its own scale.',
  differenceMap: (peakToValley: string) =>
    `Map of the difference: ${peakToValley} µm from its lowest to its highest place.`,
  tookTitle: 'What the lap took',
  tookOf:
    'Height before less height after, without tilt between them: highest where most was taken. Lines of its own scale.',
  tookMap: (peakToValley: string) =>
    `Map of what the lap took, from place to place ${peakToValley} µm more or less.`,
  tookUneven: (um: string, expanded: string) =>
    `From the place where least was taken to the place where most was, ${um} µm; both pictures together leave ${expanded} µm open. A tilt of the whole face is not seen in it.`,
  tookStock: (cycles: number, um: string, least: string, most: string) =>
    `By the log ${cycles === 1 ? 'the lap cycle' : `${cycles} lap cycles`} in between took ${um} µm. Over the land that is ${least} to ${most} µm, but for a tilt.`,
  tookStockAlone: (cycles: number, um: string) =>
    `By the log ${cycles === 1 ? 'the lap cycle' : `${cycles} lap cycles`} in between took ${um} µm.`,
  tookUnknown: (cycles: number) =>
    `${cycles === 1 ? 'One lap cycle is' : `${cycles} lap cycles are`} in the log in between, but not what ${cycles === 1 ? 'it' : 'they'} took.`,
  tookNoCycle: 'No lap cycle is in the log in between.',
  newRing: 'Another ring was fitted in between: these are two rings, and neither became the other.',
  noDifference: {
    'no-surface':
      'A grid of lines gives a figure and no map: there is nothing to lay on each other.',
    'other-land':
      'Their diameters are of different rings, so the maps can’t be laid on each other.',
    'sign-open':
      'Nobody saw which way the gap opens in one of them, so it may be upside down, and as photographed there is no difference to show. Say which way it opens when a photograph is read.',
  } satisfies Readonly<Record<NoDifference, string>>,
  agreeTitle: 'Do they agree?',
  changeTitle: 'Did it change?',
  agreeWord: 'Agree',
  disagreeWord: 'Do not agree',
  agree: (difference: string, expanded: string, en: string) =>
    `Their flatness agrees: it differs by ${difference} µm, within ± ${expanded} µm (En ${en}, at most 1).`,
  disagree: (difference: string, expanded: string, en: string) =>
    `Their flatness does not agree: it differs by ${difference} µm, more than ± ${expanded} µm (En ${en}, above 1). Look for dirt under the flat, a warm ring, wrong edges; read it again.`,
  changed: (difference: string, expanded: string, en: string) =>
    `Flatness changed by ${difference} µm, which is more than the uncertainty of the change, ± ${expanded} µm (En ${en}, above 1).`,
  unchanged: (difference: string, expanded: string, en: string) =>
    `Flatness changed by ${difference} µm: that is within the uncertainty of the change, ± ${expanded} µm (En ${en}, at most 1), so it may be no change at all.`,
  mapsAgree: (um: string, expanded: string) =>
    `Their maps agree: the difference is ${um} µm from lowest to highest, within ${expanded} µm, what both pictures leave open.`,
  mapsDiffer: (um: string, expanded: string) =>
    `Their maps differ: the difference is ${um} µm from lowest to highest, more than ${expanded} µm, what both pictures leave open.`,
  rule: 'Two figures agree where they differ by no more than the root of the sum of squares of their expanded uncertainties (En number, ISO 13528 and ISO/IEC 17043, from memory). Optical flat and lamp are common to both where they are the same: such an error stands in both figures and shows in no difference. For maps the same root is taken of the pictures’ own part alone (own rule, no source).',
  noAgreement: 'One of them has no uncertainty, so it can’t be said whether they agree.',
  tableTitle: 'Figures',
  table: { figure: 'Figure', change: 'Change' },
  figure: {
    flatness: 'Flatness',
    'minimum-zone': 'Flatness, minimum zone',
    rms: 'RMS',
    taper: 'Taper, outer − inner',
    'two-waves': 'Two waves around, amplitude',
    'three-waves': 'Three waves around, amplitude',
  } satisfies Readonly<Record<FaceFigureName, string>>,
  notKnown: 'not known',
  um: (value: string) => `${value} µm`,
  plusMinus: (value: string, expanded: string) => `${value} ± ${expanded} µm`,
  tableHint: 'Flatness alone has an uncertainty of its own, expanded, for about 95 %.',
  combineTitle: 'Combined',
  combineText:
    'Turned onto each other and averaged, each weighed by what its picture leaves open. What each photograph draws anew becomes smaller; optical flat, lamp, edges and the form that no fit can follow are the same in all of them and stay as they are.',
  combineResult: 'Flatness of the mean',
  combineDisagreement: (ratio: string) =>
    `They differ ${ratio} times as much as their pictures let expect, and the uncertainty was enlarged by that (ratio after R. T. Birge, Phys. Rev. 40, 207, 1932, from memory).`,
  combineExpected: (ratio: string) =>
    `They differ no more than their pictures let expect (ratio ${ratio}, at most 1; after R. T. Birge, Phys. Rev. 40, 207, 1932, from memory).`,
  combineGuess: 'The turn is a guess: the mean is as good a guess as that.',
  weights: (first: string, second: string) =>
    `Weights: ${first} % the earlier, ${second} % the later.`,
  part: (number: number) => `Reading ${number}`,
  partText: (percent: string, deg: string, isUpsideDown: boolean) =>
    `weight ${percent} %, turned by ${deg}°${isUpsideDown ? ', upside down' : ''}`,
  combineSubmit: 'Record the combination',
  combineHint:
    'It becomes a reading of its own, with the instruments of the later one, and speaks for the face. Both parts stay in the record.',
  combineTitleRefused: 'Not combined',
  refusal: {
    'one-reading': 'One reading has no mean: choose two.',
    'other-face': 'These are readings of two faces, and only readings of one face have a mean.',
    'other-condition': 'One was read as found and one as left: they are not combined.',
    replaced: 'One of these readings was corrected since, so they are not combined.',
    'no-surface': 'A grid of lines gives no map, so there is nothing to average.',
    'same-photo':
      'Both are readings of one photograph: a second photograph is needed for a second opinion.',
    'other-lap': 'The face was lapped or matted between these readings, so they are not combined.',
    'lapped-since':
      'The face was lapped or matted since: these readings are of what it was before.',
    'other-instrument':
      'They were read under different lamps or optical flats, so they are not combined: the record of a reading names one of each.',
    'other-calibration':
      'Lamp or optical flat was calibrated between these readings, or stood otherwise on the day, so they are not combined.',
    'in-doubt':
      'An instrument of one of these readings was found out of tolerance since. An inspector says first whether it stands.',
    'other-land': 'Their diameters are of different rings, so they are not combined.',
    unlike: 'Their forms are not alike at any turn: a mean of them would be of no face.',
    disagree:
      'Their figures differ by more than both uncertainties allow: a mean would hide that. Read the face again.',
    'combined-already': 'These readings are combined already: the combination is in the list.',
  } satisfies Readonly<Record<CombinationRefusal, string>>,
} as const
