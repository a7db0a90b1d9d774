import { bandHeightUm } from '../science/optics/band-height-um.ts'
import { lamps } from '../science/optics/lamps.ts'
import { countedFlatness } from '../science/surface/counted-flatness.ts'
import type { FlatnessReading, NewFlatnessReading } from './flatness.ts'
import { type FlatnessInstruments, flatnessUncertainty } from './flatness-uncertainty.ts'
import { methods } from './methods.ts'

export type ComputedFlatness = Pick<
  FlatnessReading,
  | 'wavelengthNm'
  | 'bandHeightUm'
  | 'bands'
  | 'flatnessUm'
  | 'form'
  | 'standardUncertaintyUm'
  | 'uncertainty'
  | 'method'
>

/** What a reading's figures depend on. */
export type FlatnessFigures = Pick<
  NewFlatnessReading,
  'pattern' | 'ringCentre' | 'directions' | 'viewingAngleDeg' | 'budgetInput'
>

/**
 * The computed columns of a reading, unrounded. An unreadable face has no figures.
 * @param instruments the lamp's id in the lamp table, and what flatAccuracy says; null where it is
 *   not known (it is then left out of the uncertainty)
 * @throws RangeError where the reading did not pass parseFlatnessReading
 */
export function computeFlatness(
  reading: FlatnessFigures,
  instruments: FlatnessInstruments,
): ComputedFlatness {
  const { pattern, ringCentre, viewingAngleDeg } = reading
  const { wavelengthNm } = lamps[instruments.lampId]
  const method = methods.flatnessCounted
  if (pattern === 'unreadable') {
    const height = bandHeightUm({ wavelengthNm, viewingAngleDeg })
    return { ...noFigures, wavelengthNm, bandHeightUm: height, method }
  }
  const counted = countedFlatness({
    pattern,
    readings: reading.directions,
    wavelengthNm,
    viewingAngleDeg,
    ringCentre: ringCentre ?? undefined,
  })
  const uncertainty = flatnessUncertainty(reading, counted, instruments)
  return {
    wavelengthNm,
    bandHeightUm: counted.bandHeightUm,
    bands: counted.bands,
    flatnessUm: counted.flatnessUm,
    form: counted.form,
    standardUncertaintyUm: uncertainty.standardUncertainty,
    uncertainty,
    method,
  }
}

const noFigures = {
  bands: null,
  flatnessUm: null,
  form: 'unreadable',
  standardUncertaintyUm: null,
  uncertainty: null,
} as const
