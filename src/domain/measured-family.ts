import type { MeasuredCharacteristic } from './characteristic.ts'
import type { InstrumentKind } from './instrument.ts'

/** What is read alike, and has its form and its budget alike. */
export const measuredFamilies = ['roughness', 'height', 'dial'] as const
export type MeasuredFamily = (typeof measuredFamilies)[number]

export const familyOf: Readonly<Record<MeasuredCharacteristic, MeasuredFamily>> = {
  roughness: 'roughness',
  'face-height': 'height',
  'face-parallelism': 'height',
  'shaft-run-out': 'dial',
  'sleeve-run-out': 'dial',
  'shaft-straightness': 'dial',
  'radial-lift': 'dial',
  'end-play': 'dial',
  'chamber-face-squareness': 'dial',
  'seat-face-squareness': 'dial',
  'register-concentricity': 'dial',
}

/**
 * How a figure comes about: a roughness, a height, or the difference of the highest and the lowest
 * reading, as parallelism is one too.
 */
export type FigureKind = 'roughness' | 'height' | 'dial'

export const figureKindOf: Readonly<Record<MeasuredCharacteristic, FigureKind>> = {
  ...familyOf,
  'face-parallelism': 'dial',
}

const indicators = ['dial-indicator', 'lever-indicator'] as const

/** What each family is read with. */
export const fittingKinds: Readonly<Record<MeasuredFamily, readonly InstrumentKind[]>> = {
  roughness: ['profilometer'],
  height: ['micrometer', ...indicators],
  dial: indicators,
}
