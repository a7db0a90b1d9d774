/** What the bands look like: the choices of the picker. */
export const flatnessPatterns = [
  'straight',
  'convex',
  'concave',
  'cylinder',
  'saddle',
  'rings',
  's-shape',
  'turned-edge',
  'local',
  'unreadable',
] as const

export type FlatnessPattern = (typeof flatnessPatterns)[number]

/** What the face is, as far as the pattern tells. */
export const flatnessForms = [
  'flat',
  'convex',
  'concave',
  'saddle',
  'cylinder',
  'twisted',
  'edge',
  'local',
  'undetermined',
] as const

export type FlatnessForm = (typeof flatnessForms)[number]

/** The form each readable pattern stands for; rings alone do not tell hill from hollow. */
export const formOfPattern: Readonly<Record<Exclude<FlatnessPattern, 'unreadable'>, FlatnessForm>> =
  {
    straight: 'flat',
    convex: 'convex',
    concave: 'concave',
    cylinder: 'cylinder',
    saddle: 'saddle',
    rings: 'undetermined',
    's-shape': 'twisted',
    'turned-edge': 'edge',
    local: 'local',
  }
