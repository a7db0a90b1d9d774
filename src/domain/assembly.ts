import type { TypedN } from './spring-check.ts'
import type { TypedMm } from './wear-track.ts'

/** What holds springs, rings and anti-rotation parts in place. */
export const clipStates = ['fitted', 'none-needed', 'not-fitted'] as const
export type ClipState = (typeof clipStates)[number]

export type SetScrews = {
  readonly name: string
  readonly quantityCount: number
  readonly torqueNm: number | null
  /** Asked for by the drawing or the fitting instructions; null: not stated. */
  readonly designTorqueNm: number | null
  /** Both as typed, '' where there is none; absent in records from before they were kept. */
  readonly torqueTyped?: string
  readonly designTorqueTyped?: string
}

/** The seal as it was put together. */
export type NewAssembly = {
  readonly workOrderId: number
  readonly workingLength: TypedMm
  readonly designWorkingLengthMm: number | null
  readonly workingLengthToleranceMm: number | null
  readonly designLoadN: number | null
  /** To either side; null: not stated. */
  readonly loadTolerancePercent: number | null
  /** Measured load at the working length; null: taken from the spring check. */
  readonly measuredLoad: TypedN | null
  /** Where the design values stand: drawing and revision, or fitting instructions. */
  readonly designSource: string
  readonly setScrews: readonly SetScrews[]
  /** Of their torques, to either side; null: not stated. */
  readonly torqueTolerancePercent: number | null
  readonly clips: ClipState
  readonly clipsCount: number | null
  readonly lubricant: string
  readonly isTurningFree: boolean
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type Assembly = NewAssembly & {
  readonly id: number
  /** At the working length: measured, or from the newest spring check; null: not known. */
  readonly loadN: number | null
  readonly loadFrom: 'measured' | 'spring-check' | null
  readonly springCheckId: number | null
  readonly method: string
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const assemblyBounds = {
  lengthMm: { min: 0.1, max: 2000 },
  toleranceMm: { min: 0, max: 100 },
  loadN: { min: 0, max: 1e6 },
  tolerancePercent: { min: 0, max: 100 },
  torqueNm: { min: 0, max: 10_000 },
  screwCount: { min: 1, max: 200 },
  lineCount: { min: 0, max: 12 },
  clipsCount: { min: 1, max: 200 },
  name: { max: 60 },
  source: { max: 120 },
  lubricant: { max: 80 },
} as const
