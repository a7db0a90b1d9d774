import { describe, expect, it } from 'vitest'
import { bandHalfWidths } from '../../src/plots/band-areas.ts'
import {
  type GuideScene,
  guideInnerRatio,
  guideScenes,
  guideSteps,
} from '../../src/plots/guide-scenes.ts'
import { twoBeamIntensity } from '../../src/science/optics/two-beam-intensity.ts'

/** Where between two places of the land a band of this order lies, as a share, by a fine walk. */
function placeOf(
  { scene, step, order }: { scene: GuideScene; step: number; order: number },
  at: (share: number) => { x: number; y: number },
): number {
  const { orderAt } = guideSteps(scene)[step]!
  let [place, off] = [Number.NaN, Number.POSITIVE_INFINITY]
  for (let i = 0; i <= 20_000; i += 1) {
    const { x, y } = at(i / 20_000)
    const away = Math.abs(orderAt(x, y) - order)
    if (away < off) [place, off] = [i / 20_000, away]
  }
  expect(off).toBeLessThan(0.01) // it lies there at all
  return place
}

/** From bore to rim. */
const outwards = (angleDeg: number) => (share: number) => {
  const r = guideInnerRatio + (1 - guideInnerRatio) * share
  const angle = (angleDeg * Math.PI) / 180
  return { x: r * Math.cos(angle), y: r * Math.sin(angle) }
}
/** Beside the bore, from below to above. */
const upwards = (share: number) => ({ x: 0.66, y: -0.7 + 1.4 * share })

/** Where the first ring lies between bore and rim. */
const ringAt = (scene: GuideScene, step: number, angleDeg: number) =>
  placeOf({ scene, step, order: 1 }, outwards(angleDeg))

describe('the scenes of the guide', () => {
  it('has three steps in each, and nothing but contact or air', () => {
    for (const scene of guideScenes) {
      expect(guideSteps(scene)).toHaveLength(3)
      for (const { orderAt } of guideSteps(scene)) {
        for (let angle = 0; angle < 2 * Math.PI; angle += 0.1) {
          for (const r of [guideInnerRatio, 0.7, 1]) {
            expect(orderAt(r * Math.cos(angle), r * Math.sin(angle))).toBeGreaterThanOrEqual(0)
          }
        }
      }
    }
  })

  it.each(['open-side', 'convex-press', 'concave-press'] as const)(
    'touches at the bottom and, pressed, lets bands of %s move to the open side above',
    (scene) => {
      for (const { orderAt } of guideSteps(scene)) expect(orderAt(0, -1)).toBe(0)
      const places = [0, 1, 2].map((step) => placeOf({ scene, step, order: 3 }, upwards))
      expect(places).toEqual(places.toSorted((a, b) => a - b))
      expect(places[2]! - places[0]!).toBeGreaterThan(0.05)
      // Fewer bands from the bottom to the top of the rim.
      const tops = guideSteps(scene).map(({ orderAt }) => orderAt(0, 1))
      expect(tops).toEqual(tops.toSorted((a, b) => b - a))
    },
  )

  it('moves rings outwards over a convex face and inwards over a concave one as the eye goes down', () => {
    for (const angleDeg of [0, 77, 200]) {
      const convex = [0, 1, 2].map((step) => ringAt('convex-eye', step, angleDeg))
      const concave = [0, 1, 2].map((step) => ringAt('concave-eye', step, angleDeg))
      expect(convex).toEqual(convex.toSorted((a, b) => a - b))
      expect(concave).toEqual(concave.toSorted((a, b) => b - a))
      expect(convex[2]! - convex[0]!).toBeGreaterThan(0.05)
      expect(concave[0]! - concave[2]!).toBeGreaterThan(0.05)
    }
  })

  it('lays the ring of a convex face where the closed form has it', () => {
    // gap = bow (r^2 - bore^2), seen as gap cos: r^2 = bore^2 + 1 / (3.2 cos 30 degrees)
    const expected = Math.sqrt(guideInnerRatio ** 2 + 1 / (3.2 * Math.cos(Math.PI / 6)))
    const share = (expected - guideInnerRatio) / (1 - guideInnerRatio)
    expect(ringAt('convex-eye', 1, 40)).toBeCloseTo(share, 4) // steps of 5e-5
  })

  it('bulges convex bands away from the contact, concave ones towards it', () => {
    const side = (scene: GuideScene) => guideSteps(scene)[0]!.orderAt(0.6, 0.6)
    const middle = (scene: GuideScene) => guideSteps(scene)[0]!.orderAt(0, 0.6)
    // At one height the gap of a convex face is larger at the side: its band lies lower there.
    expect(side('convex-press')).toBeGreaterThan(middle('convex-press'))
    expect(side('concave-press')).toBeLessThan(middle('concave-press'))
    expect(side('open-side')).toBe(middle('open-side'))
  })

  it('draws bands as wide as they look dark', () => {
    const [flank, middle] = bandHalfWidths.map((one) => twoBeamIntensity(one.bands))
    expect(flank).toBeCloseTo(0.62, 2) // as the comment beside them says
    expect(middle).toBeCloseTo(0.26, 2)
  })
})
