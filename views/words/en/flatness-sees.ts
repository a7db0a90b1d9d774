import type { FlatnessSees } from '../../../src/domain/flatness-sees.ts'

type Sight = { readonly name: string; readonly short: string; readonly what: string }

/** Two quantities that are both called flatness: which one a figure is, and what it sees. */
export const flatnessSeesWords = {
  taper: {
    name: 'Flatness by line count',
    short: 'by line count',
    what: 'A line count sees how a face is bowed or coned across its width, and is nearly blind to waves around it: it is no figure of the whole surface.',
  },
  'whole-surface': {
    name: 'Flatness of the whole surface',
    short: 'of the whole surface',
    what: 'The height from the lowest to the highest place of the whole face.',
  },
} as const satisfies Readonly<Record<FlatnessSees, Sight>>
