import { formatFixed } from '../../../src/science/rounding/format-fixed.ts'
import { wholeFaceWords as w } from './whole-face.ts'

/** A height in um as it stands in drawings and lists. */
export function heightText(heightUm: number): string {
  return formatFixed({ value: heightUm, decimals: 2 })
}

/** What stands in the drawings of a whole face. */
export const wholeFaceTexts = {
  heightText,
  angleText: (angleDeg: number) => `${String(angleDeg)}°`,
  radiusText: (radiusMm: number) => formatFixed({ value: radiusMm, decimals: 1 }),
  across: { ...w.across, ray: (angleDeg: number) => w.across.ray(String(angleDeg)) },
  around: w.around,
}
