/** What springs of seals are, and far beyond. */
export const springBounds = {
  springsCount: { min: 1, max: 200 },
  lengthMm: { min: 0.1, max: 2000 },
  loadN: { min: 0, max: 1e6 },
  rateNPerMm: { min: 0.001, max: 1e6 },
  loadCount: { min: 2, max: 100 },
  diameterMm: { min: 0.1, max: 10_000 },
  smallMm: { min: 0, max: 100 },
  removedUm: { min: 0, max: 10_000 },
  lengthUncertaintyMm: { min: 0, max: 100 },
  rateUncertaintyNPerMm: { min: 0, max: 1e6 },
} as const
