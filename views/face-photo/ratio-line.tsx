import type { FC } from 'hono/jsx'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { words } from '../words/en.ts'
import type { EdgeValues, FacePhotoValues } from './form-values.ts'

/**
 * Rings that lie well and diameters of another face look like edges that were not found: both
 * ratios side by side say which of them to look at. Nothing where one of them is not known.
 */
export const RatioLine: FC<{ values: FacePhotoValues }> = ({ values }) => {
  const { outer, inner, outerDiameterMm, innerDiameterMm } = values
  const rings = Math.sqrt(areaOf(inner) / areaOf(outer))
  const diameters = numberOf(innerDiameterMm) / numberOf(outerDiameterMm)
  if (![rings, diameters].every(Number.isFinite)) return null
  const text = (value: number) => formatFixed({ value, decimals: 3 })
  return <p>{words.facePhoto.ratio(text(rings), text(diameters))}</p>
}

function areaOf({ rx, ry }: EdgeValues): number {
  return numberOf(rx) * numberOf(ry)
}

function numberOf(text: string): number {
  return Number(text.trim().replace(',', '.') || 'none')
}
