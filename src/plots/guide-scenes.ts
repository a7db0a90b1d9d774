import { bandOrder } from '../science/optics/band-order.ts'
import { lamps } from '../science/optics/lamps.ts'

/** What the guide shows step by step: what is done to the flat or the eye, over which face. */
export const guideScenes = [
  'open-side',
  'convex-press',
  'concave-press',
  'convex-eye',
  'concave-eye',
] as const
export type GuideScene = (typeof guideScenes)[number]

/** Bore over rim diameter of the faces of the guide. */
export const guideInnerRatio = 0.42

/** One step: the band that is seen anywhere on the face, and how it came to be. */
export interface GuideStep {
  /** Order of the band at x across and y upwards, in outer radii; whole is dark. */
  readonly orderAt: (x: number, y: number) => number
  /** Opening of the wedge from the line of contact, at the bottom, to the top, in bands. */
  readonly openBands: number
  readonly viewingAngleDeg: number
}

/** Pressed where the gap is open, the flat turns about its line of contact and the wedge closes. */
const openBandsOfSteps: readonly number[] = [7.2, 6, 5]
/** The eye goes down from straight above. */
const anglesDegOfSteps: readonly number[] = [0, 30, 45]
/** Height of middle over rim, in bands, of a face under a wedge, and of one without. */
const bowUnderWedge = 1.05
const bowOfRings = 3.2

/**
 * The steps of a scene. Under a wedge the flat touches at the bottom of the rim and the gap is
 * open (y + 1) / 2 + bow (r^2 - 1); without one it rests on the bore of a convex face, with a gap of
 * bow (r^2 - bore^2), or on the rim of a concave one, bow (1 - r^2). Both are 0 where they touch.
 *
 * @param scene one of guideScenes
 * @returns three steps
 * Source: geometry, computed here; what is seen of a gap: bandOrder.
 * @example guideSteps('open-side')[0].orderAt(0, 1) // 7.2000
 */
export function guideSteps(scene: GuideScene): readonly GuideStep[] {
  if (scene === 'convex-eye' || scene === 'concave-eye') {
    return anglesDegOfSteps.map((viewingAngleDeg) => ({
      orderAt: (x, y) => orderOf(restingGap(scene, x * x + y * y), viewingAngleDeg),
      openBands: 0,
      viewingAngleDeg,
    }))
  }
  const bow = { 'open-side': 0, 'convex-press': bowUnderWedge, 'concave-press': -bowUnderWedge }
  return openBandsOfSteps.map((openBands) => ({
    orderAt: (x, y) => orderOf((openBands * (y + 1)) / 2 + bow[scene] * (x * x + y * y - 1), 0),
    openBands,
    viewingAngleDeg: 0,
  }))
}

function restingGap(scene: 'convex-eye' | 'concave-eye', radius2: number): number {
  return bowOfRings * (scene === 'convex-eye' ? radius2 - guideInnerRatio ** 2 : 1 - radius2)
}

/** What is seen of a gap that is given in bands as seen from straight above. */
function orderOf(gapBands: number, viewingAngleDeg: number): number {
  const { wavelengthNm } = lamps.helium
  // At the very contact rounding may leave a hair below nothing.
  const gapUm = (Math.max(0, gapBands) * wavelengthNm) / 2000
  return bandOrder({ gapUm, wavelengthNm, viewingAngleDeg })
}
