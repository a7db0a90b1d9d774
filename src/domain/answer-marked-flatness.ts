import { readMarks } from '../science/marks/read-marks.ts'
import { bandHeightUm } from '../science/optics/band-height-um.ts'
import { lamps } from '../science/optics/lamps.ts'
import type { Ellipse } from '../science/photo/ellipse.ts'
import { markedFlatnessBudget } from '../science/uncertainty/marked-flatness-budget.ts'
import { faultOfMarks } from './fault-of-marks.ts'
import { type FlatnessSees, flatnessSees } from './flatness-sees.ts'
import { methods } from './methods.ts'
import { wavelengthOf } from './parse-lamp.ts'
import type { MarkedFlatnessRequest } from './parse-marked-flatness-request.ts'
import type { Parsed } from './parsed.ts'
import { type WholeFlatness, wholeFlatness } from './whole-flatness.ts'

export type MarkedFlatnessAnswer = WholeFlatness & {
  readonly method: string
  readonly wavelengthNm: number
  readonly bandHeightUm: number
  readonly sees: FlatnessSees
  readonly bandsSeen: number
  readonly quality: number
  readonly outer: Ellipse
  readonly inner: Ellipse
  readonly cautions: readonly string[]
  /** Order less fitted order of each point, in bands, + where the gap is larger than fitted. */
  readonly residualsBands: readonly number[]
}

/**
 * Flatness of a whole face from bands that were marked on a picture; no record is made. Points that
 * give no honest figure are faults of their fields.
 */
export function answerMarkedFlatness(request: MarkedFlatnessRequest): Parsed<MarkedFlatnessAnswer> {
  const { lampId, outer, inner, points, outerDiameterMm, innerDiameterMm } = request
  const reading = readMarks(points, {
    outer,
    inner,
    radiusRatio: innerDiameterMm / outerDiameterMm,
    doOrdersRiseWithGap: request.increasingTowards === 'gap-opens',
    viewingAngleDeg: request.viewingAngleDeg,
  })
  if (reading.kind === 'refused') return { ok: false, faults: [faultOfMarks(reading)] }
  const wavelengthNm = wavelengthOf(request)
  const lampHalfWidthNm = lampId === null ? undefined : lamps[lampId].halfWidthNm
  // The reading is in bands of normal view already.
  const heightUm = bandHeightUm({ wavelengthNm })
  const whole = wholeFlatness({
    surface: reading.surface,
    isSignKnown: true,
    bandHeightUm: heightUm,
    outerDiameterMm,
    budgetOf: (flatnessUm) =>
      markedFlatnessBudget({
        expandedBands: reading.expandedUncertaintyBands,
        bandHeightUm: heightUm,
        flatnessUm,
        opticalFlatToleranceUm: request.opticalFlatToleranceUm,
        wavelengthNm,
        wavelengthHalfWidthNm: request.wavelengthHalfWidthNm ?? lampHalfWidthNm,
        viewingAngleLimitDeg: request.viewingAngleLimitDeg,
        thermal: request.thermal,
        flatThermal: request.flatThermal,
      }),
  })
  return {
    ok: true,
    value: {
      ...whole,
      wavelengthNm,
      bandHeightUm: heightUm,
      sees: flatnessSees(methods.flatnessMarked),
      bandsSeen: reading.bandCount,
      quality: reading.quality,
      outer,
      inner,
      cautions: [],
      residualsBands: reading.residuals,
      method: methods.flatnessMarked,
    },
  }
}
