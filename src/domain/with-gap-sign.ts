import type { PhotoReading } from '../science/photo/photo-reading.ts'

/**
 * A reading whose one open sign is known now.
 * @param sign 1: the surface is as it was given; -1: it is upside down
 */
export function withGapSign(reading: PhotoReading, sign: 1 | -1): PhotoReading {
  if (sign === 1) return { ...reading, isSignKnown: true }
  const { surface, gap, tiltDirectionDeg } = reading
  return {
    ...reading,
    isSignKnown: true,
    surface: { ...surface, coefficients: surface.coefficients.map((one) => 0 - one) },
    gap: { ...gap, gap: Array.from(gap.gap, (one) => 0 - one) },
    tiltDirectionDeg: tiltDirectionDeg > 0 ? tiltDirectionDeg - 180 : tiltDirectionDeg + 180,
  }
}
