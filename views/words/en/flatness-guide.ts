import type { BandPattern } from '../../../src/domain/flatness.ts'

type Scene = { readonly title: string; readonly captions: readonly string[] }

/** The guide to light bands: what to do, what is then seen, and what it means. */
export const flatnessGuideWords = {
  title: 'Guide to light bands',
  lead: 'Every picture is computed from the air gap. Compare them with what is under your lamp.',
  fold: 'Guide: where the gap opens, hill or hollow, how each pattern comes about',
  asPage: 'The guide as a page of its own',
  stepsLegend: (title: string) => `Steps: ${title}`,
  step: (number: number) => `Step ${number}`,
  all: 'All steps',
  rule: 'One rule holds everywhere: when you press, or lower your eye, bands move towards the larger gap.',
  caution: 'Press lightly with a clean finger on the glass, never on its edge over a bare corner.',
  testsTitle: 'Which way the wedge opens, and hill or hollow',
  scenes: {
    'open-side': {
      title: 'Find where the gap is open',
      captions: [
        'The flat touches below, the gap opens upwards. Pick out one band: here it has a line in it.',
        'Press lightly at the top. The band has moved up: the gap is larger there. Fewer bands are left, and wider ones.',
        'Press a little more: it moves on the same way. The side that it leaves is the line of contact.',
      ],
    },
    'convex-press': {
      title: 'Convex: the middle stands high',
      captions: [
        'The bands bulge upwards, away from the line of contact below; their ends hook round towards it.',
        'Press at the open side: the band moves up, the way that it bulges.',
        'Bulge and movement point the same way: convex.',
      ],
    },
    'concave-press': {
      title: 'Concave: the middle lies low',
      captions: [
        'The bands bulge downwards, towards the line of contact; their ends swing away from it.',
        'Press at the open side: the band moves up, against the way that it bulges.',
        'Bulge and movement point opposite ways: concave.',
      ],
    },
    'convex-eye': {
      title: 'Rings over a convex face',
      captions: [
        'Without a wedge a bowed face shows rings. From straight above, hill and hollow look alike.',
        'Lower your eye to 30° from straight above: the ring moves outwards.',
        'Lower still, 45°: further out. The gap is larger outside, so the middle stands high: convex.',
      ],
    },
    'concave-eye': {
      title: 'Rings over a concave face',
      captions: [
        'Much the same rings from straight above. The order of bands runs the other way, which you can’t see.',
        'Lower your eye to 30° from straight above: the ring moves inwards.',
        'Lower still, 45°: further in. The gap is larger in the middle, so it lies low: concave.',
      ],
    },
  } satisfies Readonly<Record<string, Scene>>,
  patternsTitle: 'How each pattern comes about',
  patternsLead:
    'The face below and the flat above in section, heights much exaggerated. A stroke stands wherever the gap is a whole number of half wavelengths: from above, each is a dark band.',
  sectionUp: 'Cut from the line of contact to the open side',
  sectionAcross: 'Cut across, along the line of contact',
  seen: 'Seen from above',
  patterns: {
    straight: 'The face is flat: the gap grows evenly, and each band is a straight line.',
    convex: 'The middle stands high: there a band finds its gap further from the contact.',
    concave: 'The middle lies low: there a band finds its gap nearer to the contact.',
    cylinder:
      'Bowed one way only, the flat resting on its ridge: straight bands that crowd outwards. Read across them.',
    saddle:
      'High at two ends, low at the two between: the bands bend up one way and down the other. Read both ways; the two are added.',
    rings:
      'No wedge: each ring is one height. Which way it goes the rings don’t say; the eye or the press does.',
    's-shape': 'High to one side, low to the other: a band bends up, then down.',
    'turned-edge': 'Even but for the rim, which was lapped away: only the ends of the bands hook.',
    local: 'One spot lies low: the bands kink around it and go on as before.',
  } satisfies Readonly<Record<Exclude<BandPattern, 'unreadable'>, string>>,
  lineTitle: 'What a line count does not see',
  lineLead:
    'A straight line is laid through both ends of a band, and what it cuts is counted. Bow and cone of a ring show in full. Waves around it hardly do, since the line leaves the face over the bore.',
  lineCaptions: (share: {
    readonly bore: string
    readonly trueBands: string
    readonly shownBands: string
    readonly percent: string
  }) => [
    `A saddle on a ring whose bore is ${share.bore} of its rim. Contour lines a quarter of a band apart, high places shaded above and below: ${share.trueBands} bands from lowest to highest.`,
    'The same face under the lamp. The line runs through both ends of the middle band; turned by an eighth of a turn it would find nothing at all.',
    `Filled: the true ${share.trueBands} bands. Hatched: the most that one line can show, ${share.shownBands} bands or ${share.percent} of it, (1 − ε²) / 2 with ε the bore over the rim. Two lines at right angles, added, show at most twice that.`,
  ],
  lineSo:
    'That is why the result is called flatness by line count, and never stands beside a figure of the whole surface. A grid of straight lines laid over the photograph, or the photograph itself, sees the waves too.',
} as const
