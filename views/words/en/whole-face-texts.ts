import { figure } from '../../../src/domain/figure.ts'
import { formatFixed } from '../../../src/science/rounding/format-fixed.ts'
import { wholeFaceWords as w } from './whole-face.ts'

/** A height in um as it stands in drawings and lists. */
export function heightText(heightUm: number, decimals = 2): string {
  return figure(heightUm, { decimals }).text
}

/** What stands in the drawings of a whole face. */
export const wholeFaceTexts = {
  heightText,
  angleText: (angleDeg: number) => `${String(angleDeg)}°`,
  radiusText: (radiusMm: number) => formatFixed({ value: radiusMm, decimals: 1 }),
  across: { ...w.across, ray: (angleDeg: number) => w.across.ray(String(angleDeg)) },
  around: w.around,
}
