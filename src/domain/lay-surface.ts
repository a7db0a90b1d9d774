import type { AnnularSurface } from '../science/surface/annular-surface.ts'
import { turnSurface } from '../science/surface/turn-surface.ts'

/** A surface as it lies after a turn, counter-clockwise, and upside down where it has to be. */
export function laySurface(
  surface: AnnularSurface,
  { turnDeg, isUpsideDown }: { readonly turnDeg: number; readonly isUpsideDown: boolean },
): AnnularSurface {
  const turned = turnDeg === 0 ? surface : turnSurface(surface, turnDeg)
  if (!isUpsideDown) return turned
  return { ...turned, coefficients: turned.coefficients.map((one) => 0 - one) }
}
