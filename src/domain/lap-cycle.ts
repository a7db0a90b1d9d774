/** The form of a lapping plate before a cycle, as its straight edge or gauge shows it. */
export const plateForms = ['flat', 'convex', 'concave'] as const
export type PlateForm = (typeof plateForms)[number]

/** What cuts: held by the plate, loose between plate and ring, or bound on a sheet. */
export const abrasives = [
  'diamond-charged',
  'diamond-loose',
  'silicon-carbide-loose',
  'alumina-loose',
  'boron-carbide-loose',
  'sheet',
  'other',
] as const
export type Abrasive = (typeof abrasives)[number]

/** What a cycle was for: stock, a face whose bands can be read, or a matt one for service. */
export const lapPurposes = ['lap', 'polish', 'matt'] as const
export type LapPurpose = (typeof lapPurposes)[number]

/** The figures of a cycle. Each may be left out: null is not zero. */
export const lapFigureNames = [
  'heightBeforeMm',
  'heightAfterMm',
  'plannedStockUm',
  'stockUm',
  'durationMin',
  'loadKg',
  'plateSagUm',
  'plateDiameterMm',
] as const
export type LapFigureName = (typeof lapFigureNames)[number]
export type LapFigures = Readonly<Record<LapFigureName, number | null>>

/** One run of one face on one plate. */
export type NewLapCycle = LapFigures & {
  readonly workOrderId: number
  readonly componentId: number
  readonly purpose: LapPurpose
  /** As the workshop calls it. */
  readonly plate: string
  readonly plateForm: PlateForm | null
  readonly abrasive: Abrasive | null
  /** As its label says it: a size in µm or a number of mesh. */
  readonly grit: string
  /** The ring was fitted new: what was lapped before was another one. */
  readonly isNewRing: boolean
  /** The text of each figure as it was typed. */
  readonly typed: Readonly<Partial<Record<LapFigureName, string>>>
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type LapCycle = NewLapCycle & {
  readonly id: number
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const lapCycleBounds = {
  heightBeforeMm: { min: 0.001, max: 500 },
  heightAfterMm: { min: 0.001, max: 500 },
  plannedStockUm: { min: 0, max: 10_000 },
  stockUm: { min: 0, max: 10_000 },
  durationMin: { min: 0, max: 2880 },
  loadKg: { min: 0, max: 500 },
  /** How far a plate is out of flat; which way is its form. */
  plateSagUm: { min: 0, max: 1000 },
  plateDiameterMm: { min: 20, max: 5000 },
} as const satisfies Readonly<Record<LapFigureName, { min: number; max: number }>>

/** Characters of a plate's name and of a grit. */
export const plateLength = { max: 60 } as const
export const gritLength = { max: 40 } as const

/**
 * What the trade takes off in one cycle, in µm (common practice, no source): beyond it the user is
 * asked to confirm, since it is more often a slip of the unit.
 */
export const stockWindowUm = { min: 0.05, max: 500 } as const
