import { asUncertainty } from '../../src/domain/as-uncertainty.ts'
import type { WholeReading } from '../../src/domain/pair-to-compare.ts'
import { wholeFlatness } from '../../src/domain/whole-flatness.ts'
import type { AnnularSurface } from '../../src/science/surface/annular-surface.ts'
import { annularTerms } from '../../src/science/surface/annular-terms.ts'
import { photoFlatnessBudget } from '../../src/science/uncertainty/photo-flatness-budget.ts'
import { seededNormal } from '../science/seeded-random.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'

const bandUm = 0.2938

/** A surface with every wave in it, some tenths of um high, the same for a seed. */
export function madeSurface(seed: number, scaleUm = 0.2): AnnularSurface {
  const normal = seededNormal(seed)
  return {
    radiusRatio: 0.75,
    level: 4,
    coefficients: annularTerms(4).map(({ angularOrder: m, radialOrder: p }, k) =>
      k < 2 ? 0 : (scaleUm * normal()) / (1 + m * m + p * p),
    ),
    seenFrom: 0.76,
    seenTo: 0.99,
  }
}

/** The same from edge to edge all around: 1 um at the outer edge above the inner. */
export const dish: AnnularSurface = {
  ...madeSurface(1),
  coefficients: annularTerms(4).map((term) =>
    term.angularOrder === 0 && term.radialOrder === 1 ? 0.5 : 0,
  ),
}

/** Two waves around, 1 um high. */
export const saddle: AnnularSurface = {
  ...dish,
  coefficients: annularTerms(4).map((term) =>
    term.angularOrder === 2 && term.radialOrder === 0 && !term.isSine ? 0.5 : 0,
  ),
}

/** As left, read from a photograph with an id of its own, its sign known. */
export function madeWholeReading(
  id: number,
  surface: AnnularSurface,
  changes: {
    readonly statisticalBands?: number
    readonly isSignKnown?: boolean
    readonly reading?: Partial<WholeReading>
  } = {},
): WholeReading {
  const { statisticalBands = 0.03, isSignKnown = true, reading } = changes
  const parts = { statistical: statisticalBands, form: 0.01, edge: 0.01, perspective: 0.01 }
  const whole = wholeFlatness({
    surface,
    isSignKnown,
    bandHeightUm: 1,
    outerDiameterMm: 60,
    budgetOf: (flatnessUm) =>
      photoFlatnessBudget({
        parts: { ...parts, view: 0.01, floor: 0.015 },
        bandHeightUm: bandUm,
        flatnessUm,
        wavelengthNm: 587.5618,
        wavelengthHalfWidthNm: 0.5,
        opticalFlatToleranceUm: 0.02,
      }),
  })
  const uncertainty = asUncertainty(whole.budget, ['thermal-bow'], null)
  const counted = buildFlatnessReading()
  return {
    ...counted,
    id,
    sees: 'whole-surface',
    pattern: 'whole-face',
    method: 'flatness/photo 1',
    directions: [],
    recordedAt: `2026-11-24T${String(8 + id).padStart(2, '0')}:00:00.000Z`,
    bandHeightUm: bandUm,
    bands: whole.flatnessUm / bandUm,
    flatnessUm: whole.flatnessUm,
    form: whole.form,
    standardUncertaintyUm: uncertainty.standardUncertainty,
    uncertainty,
    wholeFace: {
      source: {
        kind: 'photo',
        photoId: id,
        outer: { cx: 0, cy: 0, rx: 400, ry: 400, rotationDeg: 0 },
        inner: { cx: 0, cy: 0, rx: 300, ry: 300, rotationDeg: 0 },
        wedge: null,
        viewingAngleDeg: null,
        pressed: null,
      },
      outerDiameterMm: 60,
      innerDiameterMm: 45,
      surface,
      isSignKnown,
      minimumZoneUm: whole.flatnessMinimumZoneUm,
      rmsUm: whole.rmsUm,
      taperUm: whole.taperUm,
      lobes: whole.lobes,
      quality: 0.9,
      cautions: [],
      seen: null,
    },
    ...reading,
  }
}
