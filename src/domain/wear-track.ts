import type { InstrumentUse } from './instrument.ts'

/** A length with the text as typed. */
export type TypedMm = { readonly mm: number; readonly typed: string }

/** The worn track on one face, as found. */
export type NewWearTrack = {
  readonly workOrderId: number
  /** The face that carries the track, as a rule the wider one. */
  readonly componentId: number
  /** Width of the narrower face that made it. */
  readonly noseWidth: TypedMm
  /** Widths of the track, at one place or more. */
  readonly trackWidths: readonly TypedMm[]
  /** Of the middle of the track from the middle of the face, and towards which hour; null: none. */
  readonly offset: TypedMm | null
  readonly offsetHour: number | null
  readonly instrumentId: number | null
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type WearTrack = NewWearTrack & {
  readonly id: number
  /** Widest track less nose; negative where the track is narrower. */
  readonly movementUm: number
  readonly standardUncertaintyUm: number | null
  readonly method: string
  readonly instrument: InstrumentUse | null
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const wearTrackBounds = {
  widthMm: { min: 0.05, max: 200 },
  widthCount: { min: 1, max: 12 },
  offsetMm: { min: 0, max: 100 },
  hour: { min: 1, max: 12 },
} as const
