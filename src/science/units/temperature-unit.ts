/** The temperature units a thermometer in the shop may show. */
export const temperatureUnits = ['C', 'K', 'F'] as const

export type TemperatureUnit = (typeof temperatureUnits)[number]
