import type { RingMark } from '../../../src/science/marks/fit-marks.ts'
import { seededNormal, seededUniform } from '../seeded-random.ts'

export interface MadeFace {
  readonly radiusRatio: number
  /** Gap in bands; orders rise with it. */
  readonly gap: (x: number, y: number) => number
}

/** A tilted flat over a face of a given height, in bands. */
export function madeFace(
  height: (r: number, angle: number) => number,
  options: {
    readonly radiusRatio: number
    readonly tiltBands: number
    readonly towardsDeg: number
  },
): MadeFace {
  const angle = (options.towardsDeg * Math.PI) / 180
  const slope = options.tiltBands / 2
  return {
    radiusRatio: options.radiusRatio,
    gap: (x, y) =>
      20 +
      slope * (x * Math.cos(angle) + y * Math.sin(angle)) -
      height(Math.hypot(x, y), Math.atan2(y, x)),
  }
}

/** Marks on the bands of a face, spread around, missed as a careful hand does. */
export function madeMarks(
  face: MadeFace,
  options: { readonly count: number; readonly seed: number; readonly missBands?: number },
): RingMark[] {
  const { radiusRatio, gap } = face
  const uniform = seededUniform(options.seed)
  const normal = seededNormal(options.seed + 1000)
  const missBands = options.missBands ?? 0.06
  const slopeAt = (x: number, y: number) => {
    const h = 1e-4
    return {
      x: (gap(x + h, y) - gap(x - h, y)) / (2 * h),
      y: (gap(x, y + h) - gap(x, y - h)) / (2 * h),
    }
  }
  const marks: RingMark[] = []
  for (let turn = 0; marks.length < options.count && turn < 20_000; turn++) {
    // Steps of the golden angle spread them around.
    const angle = 2.399963 * turn + 0.3 * uniform()
    const r = radiusRatio + (1 - radiusRatio) * uniform()
    let [x, y] = [r * Math.cos(angle), r * Math.sin(angle)]
    // Dark and bright middles.
    const order = Math.round(2 * gap(x, y)) / 2
    for (let step = 0; step < 20; step++) {
      const slope = slopeAt(x, y)
      const move = (order - gap(x, y)) / Math.max(0.25, slope.x ** 2 + slope.y ** 2)
      x += move * slope.x
      y += move * slope.y
    }
    const at = Math.hypot(x, y)
    if (Math.abs(gap(x, y) - order) > 1e-3 || at < radiusRatio || at > 1) continue
    const slope = slopeAt(x, y)
    const miss = (missBands * normal()) / Math.max(1, slope.x ** 2 + slope.y ** 2)
    const place = missBands > 0 ? 0.004 : 0
    x += miss * slope.x + place * normal()
    y += miss * slope.y + place * normal()
    const held = Math.min(1, Math.max(radiusRatio, Math.hypot(x, y))) / Math.hypot(x, y)
    marks.push({ x: x * held, y: y * held, order })
  }
  return marks
}
