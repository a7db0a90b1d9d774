import type { MarksReading } from '../science/marks/read-marks.ts'
import { bandHeightUm } from '../science/optics/band-height-um.ts'
import { lamps } from '../science/optics/lamps.ts'
import type { Ellipse } from '../science/photo/ellipse.ts'
import type { PhotoReading } from '../science/photo/photo-reading.ts'
import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import { lineGridBudget } from '../science/uncertainty/line-grid-budget.ts'
import { markedFlatnessBudget } from '../science/uncertainty/marked-flatness-budget.ts'
import { photoFlatnessBudget } from '../science/uncertainty/photo-flatness-budget.ts'
import { angleOfView } from './angle-of-view.ts'
import { asUncertainty } from './as-uncertainty.ts'
import type { ComputedFlatness } from './compute-flatness.ts'
import type { FlatnessInstruments } from './flatness-uncertainty.ts'
import { methods } from './methods.ts'
import type { NewWholeFaceReading } from './parse-whole-face-reading.ts'
import type { LineGridSource, WholeFace } from './whole-face.ts'
import { type WholeFlatness, wholeFlatness } from './whole-flatness.ts'

/** What the science made of a photograph; a line grid needs none. */
export type FaceRead = PhotoReading | MarksReading | null

/** The columns of a reading of a whole face that are computed. */
export type ComputedWholeFace = {
  readonly computed: ComputedFlatness
  readonly wholeFace: WholeFace
  readonly viewingAngleDeg: number
}

/**
 * The figures of a whole face, unrounded, in um.
 * @param asked how it was read
 * @param read what came of it: of a photograph or of marks by the kind that was asked
 * @param instruments the lamp's id in the lamp table, and what flatAccuracy says
 * @throws RangeError where what was read is of another kind than what was asked
 */
export function computeWholeFace(
  asked: NewWholeFaceReading,
  read: FaceRead,
  instruments: FlatnessInstruments,
): ComputedWholeFace {
  const { source } = asked
  if (source.kind === 'line-grid') return ofLineGrid(asked, source, instruments)
  if (source.kind === 'photo' && read !== null && 'bandLines' in read) {
    return ofSurface(asked, instruments, {
      surface: read.surface,
      isSignKnown: read.isSignKnown,
      outer: read.outer,
      viewingAngleDeg: source.viewingAngleDeg,
      method: methods.flatnessPhoto,
      budget: (known) => photoFlatnessBudget({ ...known, parts: read.uncertainty }),
      quality: read.quality,
      cautions: read.cautions,
      seen: {
        outer: read.outer,
        inner: read.inner,
        bandLines: read.bandLines,
        residuals: read.residuals,
        markResidualsBands: [],
        doubtfulDeg: read.doubtfulDeg,
        tiltDirectionDeg: read.tiltDirectionDeg,
        tiltBands: read.tiltBands,
      },
    })
  }
  if (source.kind === 'marked' && read !== null && 'residuals' in read && 'fitSdBands' in read) {
    return ofSurface(asked, instruments, {
      surface: read.surface,
      isSignKnown: source.increasingTowards !== null,
      outer: source.outer,
      viewingAngleDeg: source.viewingAngleDeg,
      method: methods.flatnessMarked,
      budget: (known) =>
        markedFlatnessBudget({
          ...known,
          expandedBands: read.expandedUncertaintyBands,
          viewingAngleLimitDeg: asked.budgetInput.viewingAngleLimitDeg ?? undefined,
        }),
      quality: read.quality,
      cautions: [],
      seen: {
        outer: source.outer,
        inner: source.inner,
        bandLines: [],
        residuals: null,
        markResidualsBands: read.residuals,
        doubtfulDeg: [],
        tiltDirectionDeg: read.tiltDirectionDeg,
        tiltBands: read.tiltBands,
      },
    })
  }
  throw new RangeError(`computeWholeFace requires what was read of ${source.kind}`)
}

/** What every budget of a flatness takes beside its own parts. */
type Known = ReturnType<typeof knownBeside> & { readonly flatnessUm: number }

function knownBeside({ budgetInput }: NewWholeFaceReading, instruments: FlatnessInstruments) {
  const { wavelengthNm, halfWidthNm } = lamps[instruments.lampId]
  const { opticalFlatToleranceUm: stated, thermal, flatThermal } = budgetInput
  return {
    bandHeightUm: bandHeightUm({ wavelengthNm }),
    wavelengthNm,
    wavelengthHalfWidthNm: halfWidthNm,
    opticalFlatToleranceUm: stated ?? instruments.flatToleranceUm ?? undefined,
    // What is stated for a reading covers what its calibration leaves open.
    opticalFlatStandardUncertaintyUm:
      stated === null ? (instruments.flatStandardUncertaintyUm ?? undefined) : undefined,
    thermal: thermal ?? undefined,
    flatThermal: flatThermal ?? undefined,
  }
}

function isOfAngle({ source }: BudgetLine): boolean {
  return source === 'viewing-angle'
}

function leftOutOf(known: ReturnType<typeof knownBeside>): string[] {
  return [
    ...(known.opticalFlatToleranceUm === undefined ? ['optical-flat'] : []),
    ...(known.thermal === undefined ? ['thermal-bow'] : []),
    ...(known.flatThermal === undefined ? ['thermal-bow-of-flat'] : []),
  ]
}

type SurfaceRead = Pick<WholeFace, 'isSignKnown' | 'quality' | 'cautions' | 'seen'> & {
  readonly surface: PhotoReading['surface']
  readonly outer: Ellipse
  readonly viewingAngleDeg: number | null
  readonly method: string
  readonly budget: (known: Known) => readonly BudgetLine[]
}

function ofSurface(
  asked: NewWholeFaceReading,
  instruments: FlatnessInstruments,
  read: SurfaceRead,
): ComputedWholeFace {
  const { surface, isSignKnown, outer, method, quality, cautions, seen } = read
  const { outerDiameterMm, innerDiameterMm, source } = asked
  const known = knownBeside(asked, instruments)
  const whole = wholeFlatness({
    surface,
    isSignKnown,
    bandHeightUm: known.bandHeightUm,
    outerDiameterMm,
    budgetOf: (flatnessUm) => read.budget({ ...known, flatnessUm }),
  })
  const coefficients = surface.coefficients.map((one) => one * known.bandHeightUm)
  return {
    computed: columns(whole, known, method),
    wholeFace: {
      source,
      outerDiameterMm,
      innerDiameterMm,
      surface: { ...surface, coefficients },
      isSignKnown,
      minimumZoneUm: whole.flatnessMinimumZoneUm,
      rmsUm: whole.rmsUm,
      taperUm: whole.taperUm,
      lobes: whole.lobes,
      quality,
      cautions,
      seen,
    },
    viewingAngleDeg: read.viewingAngleDeg ?? angleOfView(outer),
  }
}

function columns(
  whole: Pick<WholeFlatness, 'flatnessUm' | 'form' | 'budget'>,
  known: ReturnType<typeof knownBeside>,
  method: string,
): ComputedFlatness {
  // The cosine of marks and grids comes from an edge laid by hand: nobody says how well.
  const isAngleOpen = method !== methods.flatnessPhoto && !whole.budget.some(isOfAngle)
  const leftOut = [...leftOutOf(known), ...(isAngleOpen ? ['viewing-angle'] : [])]
  const uncertainty = asUncertainty(whole.budget, leftOut, null)
  return {
    wavelengthNm: known.wavelengthNm,
    bandHeightUm: known.bandHeightUm,
    bands: whole.flatnessUm / known.bandHeightUm,
    flatnessUm: whole.flatnessUm,
    form: whole.form,
    standardUncertaintyUm: uncertainty.standardUncertainty,
    uncertainty,
    method,
  }
}

function ofLineGrid(
  asked: NewWholeFaceReading,
  source: LineGridSource,
  instruments: FlatnessInstruments,
): ComputedWholeFace {
  const known = knownBeside(asked, instruments)
  const viewedAt = source.viewingAngleDeg ?? 0
  const cosine = Math.cos((viewedAt * Math.PI) / 180)
  const flatnessUm = ((source.oneWayBands + source.otherWayBands) * known.bandHeightUm) / cosine
  const { viewingAngleLimitDeg } = asked.budgetInput
  const { budget } = lineGridBudget({
    ...known,
    flatnessUm,
    viewingAngleLimitDeg: viewingAngleLimitDeg ?? undefined,
  })
  return {
    computed: columns(
      { flatnessUm, form: 'undetermined', budget },
      known,
      methods.flatnessLineGrid,
    ),
    wholeFace: {
      source,
      outerDiameterMm: asked.outerDiameterMm,
      innerDiameterMm: asked.innerDiameterMm,
      surface: null,
      isSignKnown: false,
      minimumZoneUm: null,
      rmsUm: null,
      taperUm: null,
      lobes: [],
      quality: null,
      cautions: [],
      seen: null,
    },
    viewingAngleDeg: viewedAt,
  }
}
