import type { RingMark } from './fit-marks.ts'
import type { MarksRefusal } from './marks-refusal.ts'

/** How many marks are asked for; fewer gave errors of up to half a band. */
export const fewestMarks = 20
const fewestOrders = 3
/** No larger part of the ring may be without marks; common practice, no source. */
const widestGapDeg = 60
/** So many marks in the outer and in the inner 40 % of the land. */
const fewestNearEdge = 3
/** Share of the outer radius by which a finger may miss the land; common practice, no source. */
const offLand = 0.03

const refuse = (
  reason: MarksRefusal['reason'],
  measured: number,
  limit: number,
  more: Partial<Pick<MarksRefusal, 'markIndex' | 'gapDeg'>> = {},
): MarksRefusal => ({
  kind: 'refused',
  reason,
  measured,
  limit,
  markIndex: more.markIndex ?? null,
  gapDeg: more.gapDeg ?? null,
})

function widestGap(marks: readonly RingMark[]) {
  const angles = marks
    .map(({ x, y }) => ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360)
    .sort((a, b) => a - b)
  return angles
    .map((from, i) => {
      const to = angles[i + 1] ?? (angles[0] as number) + 360
      return { from, to, width: to - from }
    })
    .reduce((a, b) => (b.width > a.width ? b : a))
}

/**
 * Asks of marks what must hold before a surface is fitted to them, in the order of causes.
 *
 * @param marks on a ring of outer radius 1
 * @param radiusRatio inner over outer radius
 * @returns the first thing that does not hold: a mark more than 3 % of the outer radius off the
 *   land, fewer than 20 marks, fewer than 3 band orders, more than 60 degrees without a mark, fewer
 *   than 3 marks in the outer or the inner 40 % of the land; null when all hold
 * Source: 20 marks after trials on synthetic faces; the others are common practice, no source.
 * @example judgeMarks([{ x: 1, y: 0, order: 1 }], 0.8)?.reason // too-few-marks
 */
export function judgeMarks(marks: readonly RingMark[], radiusRatio: number): MarksRefusal | null {
  const radii = marks.map(({ x, y }) => Math.hypot(x, y))
  const off = radii.map((r) => Math.max(radiusRatio - r, r - 1))
  const markIndex = off.findIndex((one) => one > offLand)
  if (markIndex >= 0) {
    return refuse('mark-off-land', off[markIndex] as number, offLand, { markIndex })
  }
  if (marks.length < fewestMarks) return refuse('too-few-marks', marks.length, fewestMarks)
  const orderCount = new Set(marks.map((mark) => mark.order)).size
  if (orderCount < fewestOrders) return refuse('too-few-orders', orderCount, fewestOrders)
  const { from, to, width } = widestGap(marks)
  if (width > widestGapDeg) {
    const gapDeg = [from, to % 360] as const
    return refuse('marks-leave-gap', width, widestGapDeg, { gapDeg })
  }
  const share = radii.map((r) => (r - radiusRatio) / (1 - radiusRatio))
  const nearEdge = Math.min(
    share.filter((one) => one <= 0.4).length,
    share.filter((one) => one >= 0.6).length,
  )
  if (nearEdge < fewestNearEdge) return refuse('marks-leave-edge', nearEdge, fewestNearEdge)
  return null
}
