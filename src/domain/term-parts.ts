import type { FindingTerm } from './finding.ts'
import { faceKinds } from './seal.ts'
import { type StripPart, stripParts } from './strip-part.ts'

const secondaries = ['rotating-secondary', 'stationary-secondary'] as const
const hardware = ['sleeve', 'gland', 'drive', 'fasteners', 'other-hardware'] as const

/** Which parts a term can be said of. */
export const termParts: Readonly<Record<FindingTerm, readonly StripPart[]>> = {
  'even-track': faceKinds,
  'wide-track': faceKinds,
  'narrow-track': faceKinds,
  'patchy-track': faceKinds,
  'high-spots': faceKinds,
  'partial-contact': faceKinds,
  'heavy-outer-contact': faceKinds,
  'heavy-inner-contact': faceKinds,
  'heat-checks': faceKinds,
  blisters: faceKinds,
  'chipped-edge': faceKinds,
  grooves: faceKinds,
  pitting: [...faceKinds, ...hardware],
  coking: [...faceKinds, ...secondaries, 'sleeve'],
  cracked: [...faceKinds, 'spring', ...hardware],
  swollen: secondaries,
  hardened: secondaries,
  'compression-set': secondaries,
  extruded: secondaries,
  nibbled: secondaries,
  cut: secondaries,
  fretting: [...secondaries, 'sleeve', 'gland', 'drive'],
  clogged: ['spring'],
  broken: ['spring', 'drive', 'fasteners', 'other-hardware'],
  'set-short': ['spring'],
  'worn-coils': ['spring'],
  'worn-drive': ['drive', 'rotating-face', 'sleeve'],
  'set-screw-marks': ['sleeve', 'fasteners'],
  corroded: ['spring', ...hardware, ...faceKinds],
  deposits: stripParts,
  rubbed: [...hardware, ...faceKinds],
  'missing-part': stripParts,
  'nothing-found': stripParts,
}

/** The terms that can be said of a part, in their order. */
export function termsOf(part: StripPart): readonly FindingTerm[] {
  const terms = Object.keys(termParts) as FindingTerm[]
  return terms.filter((term) => termParts[term].includes(part))
}
