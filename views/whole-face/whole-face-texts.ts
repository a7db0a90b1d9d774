import type { WholeFaceTexts } from '../../src/plots/whole-face-drawings.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { numberText } from '../figures/number-text.ts'
import { wholeFaceWords as w } from '../words/en/whole-face.ts'

/** A height in um as it stands in drawings and lists. */
export function heightText(heightUm: number): string {
  return formatFixed({ value: heightUm, decimals: 2 })
}

/** What stands in the drawings of a whole face. */
export const wholeFaceTexts: WholeFaceTexts = {
  heightText,
  angleText: (angleDeg) => `${numberText(angleDeg)}°`,
  radiusText: (radiusMm) => formatFixed({ value: radiusMm, decimals: 1 }),
  across: { ...w.across, ray: (angleDeg) => w.across.ray(numberText(angleDeg)) },
  around: w.around,
}
