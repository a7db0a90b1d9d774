import type { FindingTerm } from './finding.ts'

/** How well a hint is founded. */
export type HintBasis = 'published' | 'from memory'

/**
 * Terms that the trade reads causes from, and how well that is founded: the words stand in views.
 * `published`: repair and failure guides on wear patterns, seen as stored copies; guides disagree
 * on the narrow track. They help to think, and record nothing by themselves.
 */
export const termHints: Readonly<Partial<Record<FindingTerm, HintBasis>>> = {
  'even-track': 'published',
  'wide-track': 'published',
  'narrow-track': 'published',
  'patchy-track': 'published',
  'high-spots': 'from memory',
  'partial-contact': 'from memory',
  'heavy-outer-contact': 'from memory',
  'heavy-inner-contact': 'from memory',
  'heat-checks': 'published',
  blisters: 'from memory',
  'chipped-edge': 'from memory',
  grooves: 'published',
  pitting: 'published',
  coking: 'published',
  fretting: 'published',
  clogged: 'published',
  broken: 'published',
}
