import type { SurveyCaution } from '../../../src/domain/survey-result.ts'

type Told = {
  /** On pages and certificates. */
  readonly what: string
  /** What would mend it, while the survey is still open; '' where nothing would. */
  readonly act: string
}

/** What to know before a survey is believed. */
export const surveyCautionWords: Readonly<Record<SurveyCaution, Told>> = {
  drift: {
    what: 'The closing reading differs from the first by more than this indicator may: the set-up may have moved.',
    act: 'Look at stand, bracket and float, and read again.',
  },
  'few-positions': {
    what: 'Fewer than eight positions: lobes between them go unseen, and the direction is rough.',
    act: '',
  },
  'positions-bunched': {
    what: 'The positions lie close together: what they say of eccentricity or tilt is a guess, without a direction.',
    act: '',
  },
  'float-not-held': {
    what: 'The axial float was neither held nor taken out by a second indicator: it may be part of this sweep.',
    act: 'Push the shaft one way, or use two indicators.',
  },
  'vee-blocks': {
    what: 'Turned in vee-blocks: lobes move the part up and down, so that this is no roundness.',
    act: '',
  },
  'direction-unsure': {
    what: 'The eccentricity or tilt is too small against its uncertainty to have a direction.',
    act: '',
  },
  'lobes-unseen': {
    what: 'Two opposite indicators see the tilt and odd waves of the face only: an oval face goes into the float.',
    act: '',
  },
}
