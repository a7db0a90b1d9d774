/**
 * What the trade commonly meets (common practice, no source). Inside it everything is accepted;
 * beyond it the user is asked to confirm, since it is more often a slip of the unit.
 */
export const tradeWindow = {
  shaftDiameterMm: { min: 5, max: 500 },
  sealedPressureKPa: { min: -101.325, max: 45_000 },
  temperatureC: { min: -200, max: 450 },
  slidingSpeedMPerS: { min: 0, max: 150 },
} as const

export type WindowName = keyof typeof tradeWindow
