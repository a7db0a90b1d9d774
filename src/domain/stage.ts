/** Where a work order stands, from receipt to dispatch, in the order of the work. */
export const stages = [
  'received',
  'stripped',
  'lapping',
  'testing',
  'handed-over',
  'released',
  'dispatched',
] as const

/** Beside the line: refused goes back to the bench, withdrawn ends the order. */
export const sideStages = ['refused', 'withdrawn'] as const

export type Stage = (typeof stages)[number] | (typeof sideStages)[number]
export const allStages: readonly Stage[] = [...stages, ...sideStages]

/** Which stage may follow which. Recording work moves an order on; nothing moves it back but refusal. */
export const stageTransitions: Readonly<Record<Stage, readonly Stage[]>> = {
  received: ['stripped', 'lapping', 'testing', 'withdrawn'],
  stripped: ['lapping', 'testing', 'withdrawn'],
  lapping: ['testing', 'handed-over', 'withdrawn'],
  testing: ['lapping', 'handed-over', 'withdrawn'],
  'handed-over': ['released', 'refused', 'withdrawn'],
  refused: ['lapping', 'testing', 'handed-over', 'withdrawn'],
  released: ['dispatched'],
  dispatched: [],
  withdrawn: [],
}

/** Stages in which readings and tests may be recorded. */
export const openStages: readonly Stage[] = [
  'received',
  'stripped',
  'lapping',
  'testing',
  'refused',
]
