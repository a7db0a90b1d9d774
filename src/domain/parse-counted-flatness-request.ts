import type { CountedReading } from '../science/surface/reading-bands.ts'
import type { BandRepeatability } from '../science/uncertainty/counted-flatness-budget.ts'
import type { ThermalBow } from '../science/uncertainty/thermal-bow-line.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { type BandPattern, bandPatterns, flatnessBounds } from './flatness.ts'
import { bowBounds, directionCount } from './parse-directions.ts'
import { type AskedLamp, parseLamp } from './parse-lamp.ts'
import { parseThermal, thermalBounds } from './parse-thermal.ts'
import type { Parsed } from './parsed.ts'

/** What the calculator of counted bands is asked; a lamp by name or by its wavelength. */
export type CountedFlatnessRequest = AskedLamp & {
  readonly viewingAngleDeg: number
  readonly pattern: BandPattern
  readonly ringCentre: 'high' | 'low' | undefined
  readonly readings: readonly CountedReading[]
  readonly readingHalfWidthBands: number | undefined
  readonly opticalFlatToleranceUm: number | undefined
  readonly viewingAngleLimitDeg: number | undefined
  readonly wavelengthHalfWidthNm: number | undefined
  readonly thermal: ThermalBow | undefined
  readonly flatThermal: ThermalBow | undefined
  readonly repeatability: BandRepeatability | undefined
}

const ringCentres = ['high', 'low'] as const

export const countedFlatnessFields = [
  'lamp',
  'wavelengthNm',
  'viewingAngleDeg',
  'pattern',
  'ringCentre',
  'readings',
  'readingHalfWidthBands',
  'opticalFlatToleranceUm',
  'viewingAngleLimitDeg',
  'wavelengthHalfWidthNm',
  'thermal',
  'flatThermal',
  'repeatability',
] as const

/** What the calculator takes; wider than what one sees under a lamp. */
export const countedFlatnessBounds = {
  wavelengthNm: { min: 200, max: 2000 },
  wavelengthHalfWidthNm: { min: 0, max: 100 },
  bands: { min: 0, max: 1000 },
  halfWidthBands: { min: 0, max: 100 },
  toleranceUm: { min: 0, max: 100 },
  thermal: thermalBounds,
  repeatCount: { min: 2, max: 1_000_000 },
  /** Where the deviation is from elsewhere, one count is enough. */
  knownRepeatCount: { min: 1, max: 1_000_000 },
  degreesOfFreedom: { min: 1, max: 1_000_000 },
} as const

/** Reads a request for flatness from counted bands. Unreadable is refused: it has no figure. */
export function parseCountedFlatnessRequest(input: Input): Parsed<CountedFlatnessRequest> {
  const fields = openFields(input)
  fields.only(...countedFlatnessFields)
  const bounds = countedFlatnessBounds
  const lamp = parseLamp(fields, bounds.wavelengthNm)
  const pattern = fields.choice('pattern', bandPatterns)
  if (pattern === 'unreadable') fields.fault('pattern', 'unreadable')
  return fields.finish({
    ...lamp,
    viewingAngleDeg: fields.optionalDecimal('viewingAngleDeg', flatnessBounds.viewingAngleDeg) ?? 0,
    pattern,
    ringCentre: fields.optionalChoice('ringCentre', ringCentres) ?? undefined,
    readings: parseReadings(fields, pattern, input.readings !== undefined),
    readingHalfWidthBands: maybe(fields, 'readingHalfWidthBands', bounds.halfWidthBands),
    opticalFlatToleranceUm: maybe(fields, 'opticalFlatToleranceUm', bounds.toleranceUm),
    viewingAngleLimitDeg: maybe(fields, 'viewingAngleLimitDeg', flatnessBounds.viewingAngleDeg),
    wavelengthHalfWidthNm: maybe(fields, 'wavelengthHalfWidthNm', bounds.wavelengthHalfWidthNm),
    thermal: input.thermal == null ? undefined : parseThermal(fields.group('thermal')),
    flatThermal: input.flatThermal == null ? undefined : parseThermal(fields.group('flatThermal')),
    repeatability:
      input.repeatability == null ? undefined : parseRepeatability(fields.group('repeatability')),
  })
}

function maybe(fields: Fields, name: string, bounds: { min: number; max: number }) {
  return fields.optionalDecimal(name, bounds) ?? undefined
}

function parseReadings(
  fields: Fields,
  pattern: BandPattern,
  isGiven: boolean,
): readonly CountedReading[] {
  const isCountless = pattern === 'straight' || pattern === 'unreadable'
  if (isCountless && !isGiven) return []
  const fewest = pattern === 'saddle' ? 2 : isCountless ? 0 : 1
  const count = { min: fewest, max: 100 }
  const readings = fields.list('readings', count).map((part) => {
    part.only('directionDeg', 'bands', 'bowMm', 'spacingMm')
    const directionDeg = part.decimal('directionDeg', flatnessBounds.directionDeg)
    const isBow = part.isGiven('bowMm') || part.isGiven('spacingMm')
    if (isBow && part.isGiven('bands')) {
      part.fault('bands', 'one-of-two', { one: 'bands', other: 'bowMm with spacingMm' })
    }
    if (!isBow) return { directionDeg, bands: part.decimal('bands', countedFlatnessBounds.bands) }
    const bowMm = part.decimal('bowMm', bowBounds.bowMm)
    return { directionDeg, bowMm, spacingMm: part.decimal('spacingMm', bowBounds.spacingMm) }
  })
  const isOneWay = pattern === 'saddle' && directionCount(readings) < count.min
  if (isOneWay && fields.faults.length === 0) fields.fault('readings', 'too-few', count)
  return readings
}

function parseRepeatability(part: Fields): BandRepeatability {
  const { halfWidthBands, repeatCount, knownRepeatCount, degreesOfFreedom } = countedFlatnessBounds
  part.only('standardDeviationBands', 'count', 'degreesOfFreedom')
  const known = part.optionalWhole('degreesOfFreedom', degreesOfFreedom) ?? undefined
  return {
    standardDeviationBands: part.decimal('standardDeviationBands', halfWidthBands),
    count: part.whole('count', known === undefined ? repeatCount : knownRepeatCount),
    degreesOfFreedom: known,
  }
}
