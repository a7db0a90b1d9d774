import type { FaceState } from '../../../src/domain/face-state.ts'

/** The words of a finish: how the face was, and what its single traces say. */
export const finishWords = {
  state: 'How is the face?',
  stateHint: 'When it was traced. Matting after that makes it another finish: read it again.',
  stateNotSaid: 'Not recorded',
  states: {
    lapped: 'As lapped',
    polished: 'Polished',
    matted: 'Matted',
  } satisfies Record<FaceState, string>,
  readOn: {
    lapped: 'read on the face as lapped',
    polished: 'read on the polished face',
    matted: 'read on the matted face',
  } satisfies Record<FaceState, string>,
  byLog: (readOn: string) => `${readOn}, by the lapping log`,
  unlikeLog: (readOn: string, byLog: FaceState) =>
    `${readOn}, as its reader says; by the lapping log it was ${
      { lapped: 'lapped', polished: 'polished', matted: 'matted' }[byLog]
    } last`,
  stateUnknown: 'how the face was is not recorded',
  evaluation: (mm: string) => `evaluated over ${mm} mm`,
  traces: (count: number, largest: string) => `${count} traces, largest ${largest} µm`,
  largestLabel: 'Largest trace',
  byLogLabel: 'Face by the lapping log',
  lastMade: (state: string, at: string) => `${state}, ${at}`,
  notAsSaid: (said: string) => `${said}: not as you say`,
  ruleLabel: '16 % rule',
  rule: {
    accepted: 'kept',
    refused: 'not kept',
    more: (untilCount: number) => `decided with ${untilCount} traces`,
    above: (beyondCount: number, count: number) =>
      beyondCount === 0 ? 'none above the limit' : `${beyondCount} of ${count} above the limit`,
    source: 'ISO 4288, from memory',
  },
} as const
