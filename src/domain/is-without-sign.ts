import type { Characteristic } from './characteristic.ts'

const withoutSign: readonly Characteristic[] = [
  'flatness',
  'roughness',
  'face-height',
  'face-parallelism',
  'shaft-run-out',
  'sleeve-run-out',
  'shaft-straightness',
  'radial-lift',
  'end-play',
  'chamber-face-squareness',
  'seat-face-squareness',
  'register-concentricity',
]

/**
 * Says whether a characteristic is a length without a sign: the truth can't lie below nought then.
 * A drop or a leak rate can be negative.
 */
export function isWithoutSign(characteristic: Characteristic): boolean {
  return withoutSign.includes(characteristic)
}
