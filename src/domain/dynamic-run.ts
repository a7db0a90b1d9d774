/** What a rig reads while a seal runs. */
export const runChannels = [
  'massG',
  'flowMlPerMin',
  'pressureKPaGauge',
  'chamberTemperatureC',
  'faceTemperatureC',
  'speedPerMin',
  'torqueNm',
  'powerW',
] as const
export type RunChannel = (typeof runChannels)[number]

/** One reading of a rig: one channel at least. */
export type RunSample = { readonly timeS: number } & {
  readonly [channel in RunChannel]?: number | undefined
}

/** A step of the program that the rig went through. */
export type RunStep = {
  readonly name: string
  readonly holdS: number | null
  readonly speedPerMin: number | null
  readonly pressureKPaGauge: number | null
  readonly temperatureC: number | null
}

export type NewDynamicRun = {
  readonly workOrderId: number
  readonly startedAt: string
  /** '' where it was not stated. */
  readonly liquid: string
  readonly densityKgPerM3: number | null
  readonly steps: readonly RunStep[]
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type DynamicRun = NewDynamicRun & {
  readonly id: number
  readonly sampleCount: number
  /** Everybody whose readings it holds: they did the work. */
  readonly hands: readonly number[]
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const dynamicRunBounds = {
  timeS: { min: -1e9, max: 1e12 },
  densityKgPerM3: { min: 0.01, max: 20_000 },
  holdS: { min: 0, max: 1e8 },
  stepCount: { min: 0, max: 200 },
  liquidLength: 80,
  stepNameLength: 80,
  /** In one batch. */
  sampleCount: { min: 1, max: 5000 },
} as const

export const runChannelBounds: Readonly<Record<RunChannel, { min: number; max: number }>> = {
  massG: { min: -1e6, max: 1e6 },
  flowMlPerMin: { min: -1e6, max: 1e6 },
  pressureKPaGauge: { min: -110, max: 1e6 },
  chamberTemperatureC: { min: -270, max: 2000 },
  faceTemperatureC: { min: -270, max: 2000 },
  speedPerMin: { min: 0, max: 200_000 },
  torqueNm: { min: -1e6, max: 1e6 },
  powerW: { min: -1e9, max: 1e9 },
}
