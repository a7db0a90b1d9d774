import type { Ellipse } from '../photo/ellipse.ts'
import { surfaceGrid } from '../photo/surface-grid.ts'
import type { AnnularSurface } from '../surface/annular-surface.ts'
import { type FittedMarks, fitMarks } from './fit-marks.ts'
import { judgeMarks } from './judge-marks.ts'
import type { MarksRefusal } from './marks-refusal.ts'
import { marksUncertainty } from './marks-uncertainty.ts'
import { type MarkedEdges, placeOnRing } from './place-on-ring.ts'

/** A place on a picture, in pixels from the left and from the top, on a band of known order. */
export interface PictureMark {
  readonly x: number
  readonly y: number
  /** Whole for the middle of a dark band, half for the bright middle between two. */
  readonly order: number
}

/** What was read from marks; heights in bands of normal view, + is material high. */
export interface MarksReading {
  readonly kind: 'read'
  readonly surface: AnnularSurface
  /** Expanded uncertainty of the peak to valley from the marks alone, and the sd of the fit. */
  readonly expandedUncertaintyBands: number
  readonly fitSdBands: number
  /** Tilt of the flat that was taken away, bands over the outer diameter, as it was seen. */
  readonly tiltBands: number
  /** Direction in which the gap grows, degrees counter-clockwise from the right. */
  readonly tiltDirectionDeg: number
  /** How many dark bands the marks span. */
  readonly bandCount: number
  /** From 0 to 1: how well the marks agree with one smooth surface. */
  readonly quality: number
  readonly noiseFactor: number
  /** Order less fitted order of each mark. */
  readonly residuals: readonly number[]
}

const leastAxisRatio = 0.93
const mostRatioError = 0.05
/** Of radii; beyond them there is no land to speak of; common practice, no source. */
const ratios = { from: 0.05, to: 0.985 }
/**
 * A mark that misses all the others by so much, in bands and over its standard deviation, has a
 * wrong order. Half a band is the least that an order can be wrong by; 0.4 band and 4 standard
 * deviations: common practice, no source.
 */
const surprise = { bands: 0.4, ratio: 4 }

const axisRatioOf = ({ rx, ry }: Ellipse) => Math.min(rx, ry) / Math.max(rx, ry)

const refuse = (
  reason: MarksRefusal['reason'],
  measured: number,
  limit: number,
  markIndex: number | null = null,
): MarksRefusal => ({ kind: 'refused', reason, measured, limit, markIndex, gapDeg: null })

function judgeEdges({ outer, inner, radiusRatio }: MarkedEdges): MarksRefusal | null {
  const radius = Math.sqrt(outer.rx * outer.ry)
  const ratioError = Math.abs(Math.sqrt(inner.rx * inner.ry) / radius - radiusRatio)
  const apart = Math.hypot(outer.cx - inner.cx, outer.cy - inner.cy) / radius
  const worst = Math.max(ratioError, apart)
  if (!(radiusRatio >= ratios.from && radiusRatio <= ratios.to)) {
    return refuse('edges-not-one-ring', radiusRatio, ratios.to)
  }
  if (!(worst <= mostRatioError)) return refuse('edges-not-one-ring', worst, mostRatioError)
  const axisRatio = axisRatioOf(outer)
  if (axisRatio < leastAxisRatio) return refuse('view-too-oblique', axisRatio, leastAxisRatio)
  return null
}

function wrongMark({ surprises }: FittedMarks): MarksRefusal | null {
  const worst = surprises.reduce(
    (at, one, i) => (Math.abs(one.ratio) > Math.abs(surprises[at]?.ratio ?? 0) ? i : at),
    0,
  )
  const { bands, ratio } = surprises[worst] as { bands: number; ratio: number }
  const isWrong = Math.abs(ratio) > surprise.ratio && Math.abs(bands) > surprise.bands
  return isWrong ? refuse('mark-does-not-fit', bands, surprise.bands, worst) : null
}

function qualityOf(fit: FittedMarks): number {
  const square = fit.residuals.reduce((sum, one) => sum + one * one, 0) / fit.residuals.length
  // A quarter of a band off is as good as not seen.
  return Math.max(0, 1 - Math.sqrt(square) / 0.25)
}

/**
 * Reads the flatness of a ring from places that were marked along its bands on a picture.
 *
 * gap W = order for orders that rise where the gap opens, -order else; height = -(W without its
 * plane) / cos(view)
 *
 * @param marks in pixels
 * @param options edges as MarkedEdges; doOrdersRiseWithGap; viewingAngleDeg: from the normal, from
 *   0 to 80, where it is known better than the outer edge shows it by its axes
 * @returns the surface with its uncertainty, in bands of the lamp at normal view; or a refusal with
 *   its reason. The same marks give the same figures, bit for bit
 * @throws RangeError as placeOnRing does
 * Validity: one smooth land; by marks alone a tenth of a band is not reached.
 * Source: as fitMarks and marksUncertainty; its limits of edges and of a wrong order are common
 *   practice, no source.
 * @example readMarks([], { outer: { cx: 9, cy: 9, rx: 9, ry: 9, rotationDeg: 0 },
 *   inner: { cx: 9, cy: 9, rx: 6, ry: 6, rotationDeg: 0 }, radiusRatio: 0.9,
 *   doOrdersRiseWithGap: true }).reason // edges-not-one-ring
 */
export function readMarks(
  marks: readonly PictureMark[],
  options: MarkedEdges & {
    readonly doOrdersRiseWithGap: boolean
    readonly viewingAngleDeg?: number | undefined
  },
): MarksReading | MarksRefusal {
  const { outer, radiusRatio, doOrdersRiseWithGap, viewingAngleDeg } = options
  const edgeRefusal = judgeEdges(options)
  if (edgeRefusal !== null) return edgeRefusal
  const sign = doOrdersRiseWithGap ? 1 : -1
  const placed = marks.map((mark) => {
    const { x, y } = placeOnRing(mark, options)
    return { x, y, order: mark.order }
  })
  const refusal = judgeMarks(placed, radiusRatio)
  if (refusal !== null) return refusal
  const fit = fitMarks(placed, radiusRatio)
  const wrong = wrongMark(fit)
  if (wrong !== null) return wrong
  const cosine =
    viewingAngleDeg === undefined ? axisRatioOf(outer) : Math.cos((viewingAngleDeg * Math.PI) / 180)
  const land = { radiusRatio, level: fit.level, seenFrom: radiusRatio, seenTo: 1 }
  const grid = surfaceGrid({ ...land, from: radiusRatio, to: 1 })
  const { fitSdBands, expandedBands } = marksUncertainty(fit, grid)
  const [tiltX, tiltY] = [sign * (fit.gap[1] as number), sign * (fit.gap[2] as number)]
  const orders = marks.map((mark) => mark.order)
  return {
    kind: 'read',
    surface: {
      ...land,
      coefficients: Array.from(fit.gap.subarray(1), (value, k) =>
        k < 2 ? 0 : (-sign * value) / cosine + 0,
      ),
    },
    expandedUncertaintyBands: expandedBands / cosine,
    fitSdBands: fitSdBands / cosine,
    tiltBands: 2 * Math.hypot(tiltX, tiltY),
    tiltDirectionDeg: (Math.atan2(tiltY, tiltX) * 180) / Math.PI,
    bandCount: Math.floor(Math.max(...orders)) - Math.ceil(Math.min(...orders)) + 1,
    quality: qualityOf(fit),
    noiseFactor: fit.noiseFactor,
    residuals: fit.residuals.map((one) => sign * one),
  }
}
