import { bandAreas } from './band-areas.ts'
import type { Drawing, Shape } from './drawing.ts'
import { type GuideScene, guideInnerRatio, guideSteps } from './guide-scenes.ts'
import { outlinePath, type PointPx } from './path-data.ts'
import { ringArea } from './ring-area.ts'
import { roundPx } from './round-px.ts'

const facePx = 132
const signPx = 30
const halfWidth = 0.17
/** Of the bright line by which the followed band is known. */
const coreHalfWidth = 0.05
/** The band that is followed, and the way along which it is looked for, in outer radii. */
const followed: Readonly<
  Record<GuideScene, { readonly order: number; readonly from: PointPx; readonly to: PointPx }>
> = {
  'open-side': { order: 3, from: { x: 0.66, y: -0.7 }, to: { x: 0.66, y: 0.7 } },
  'convex-press': { order: 3, from: { x: 0.66, y: -0.7 }, to: { x: 0.66, y: 0.7 } },
  'concave-press': { order: 3, from: { x: 0.66, y: -0.7 }, to: { x: 0.66, y: 0.7 } },
  'convex-eye': { order: 1, from: { x: 0.36, y: 0.22 }, to: { x: 0.85, y: 0.51 } },
  'concave-eye': { order: 1, from: { x: 0.85, y: 0.51 }, to: { x: 0.36, y: 0.22 } },
}

/**
 * One step of a scene of the guide: the bands as they are seen, one of them with a bright line
 * in it, where it was a step before in dashes, and an arrow from there. Beside the face the wedge from the side, or the
 * line of sight, as it is in this step. Nothing rests on colour.
 *
 * @param scene one of guideScenes
 * @param stepIndex 0 to 2
 * @returns the drawing, 164 by 132 px; the same every time
 * @throws RangeError where there is no such step
 * Validity: a model face; the angle of the eye changes the bands only, the ring is drawn round.
 * @example guidePicture('open-side', 0).heightPx // 132
 */
export function guidePicture(scene: GuideScene, stepIndex: number): Drawing {
  const steps = guideSteps(scene)
  const step = steps[stepIndex]
  if (step === undefined) throw new RangeError(`guidePicture requires a step, got ${stepIndex}`)
  const before = steps[stepIndex - 1]
  const ring = ringArea({ sizePx: facePx, innerRatio: guideInnerRatio })
  const { order } = followed[scene]
  const outline = (at: (x: number, y: number) => number, half = halfWidth): string =>
    ring.pathOf(ring.sampled(at), (value) => half - Math.abs(value - order))
  const shapes: Shape[] = [
    { kind: 'path', d: ring.edges, fill: 'bright', part: 'land' },
    ...bandAreas(ring, step.orderAt),
    { kind: 'path', d: outline(step.orderAt), fill: 'dark', part: 'followed' },
    { kind: 'path', d: outline(step.orderAt, coreHalfWidth), fill: 'bright', part: 'core' },
  ]
  if (before !== undefined) {
    const d = outline(before.orderAt)
    shapes.push({ kind: 'path', d, stroke: 'dark', dash: 'dashed', part: 'was here' })
    const [from, to] = [before, step].map((one) => ring.toPx(placeOf(scene, one.orderAt)))
    if (from !== undefined && to !== undefined) shapes.push(...arrow(from, to))
  }
  shapes.push({ kind: 'path', d: ring.edges, stroke: 'ink', strokePx: 1.5, part: 'edges' })
  const sign = scene.endsWith('eye') ? sight(step.viewingAngleDeg) : wedge(step.openBands)
  return { widthPx: facePx + signPx + 2, heightPx: facePx, shapes: [...shapes, ...sign] }
}

/** Where the followed band crosses its way, by halving. */
function placeOf(scene: GuideScene, orderAt: (x: number, y: number) => number): PointPx {
  const { order, from, to } = followed[scene]
  const at = (share: number): PointPx => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  })
  let [low, high] = [0, 1]
  for (let turn = 0; turn < 40; turn += 1) {
    const middle = (low + high) / 2
    const { x, y } = at(middle)
    if (orderAt(x, y) < order) low = middle
    else high = middle
  }
  return at(low)
}

/** From where a band was towards where it is; never too short to be seen. */
function arrow(from: PointPx, to: PointPx): readonly Shape[] {
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y)
  const [ux, uy] = [(to.x - from.x) / lengthPx, (to.y - from.y) / lengthPx]
  const reach = Math.max(lengthPx, 15)
  const tip = { x: from.x + ux * reach, y: from.y + uy * reach }
  const barb = (side: number): PointPx => ({
    x: tip.x - ux * 7 + side * uy * 5,
    y: tip.y - uy * 7 - side * ux * 5,
  })
  const shaft = { x: tip.x - ux * 6, y: tip.y - uy * 6 }
  const head = outlinePath([tip, barb(1), barb(-1)], true)
  const line = outlinePath([from, shaft], false)
  return [
    { kind: 'path', d: line, stroke: 'paper', strokePx: 6, part: 'arrow ground' },
    { kind: 'path', d: line, stroke: 'ink', strokePx: 2.5, part: 'arrow' },
    { kind: 'path', d: head, fill: 'ink', stroke: 'paper', part: 'arrow head' },
  ]
}

/** The air between flat and face from the side, contact below, as wide as it is open above. */
function wedge(openBands: number): readonly Shape[] {
  const left = facePx + 8
  const widthPx = openBands * 3
  const corners = [
    { x: left, y: facePx - 3 },
    { x: left, y: 3 },
    { x: left + widthPx, y: 3 },
  ]
  return [
    { kind: 'path', d: outlinePath(corners, true), fill: 'faint', stroke: 'ink', part: 'wedge' },
  ]
}

/** The eye and where it looks from; the dashed line is straight above. */
function sight(angleDeg: number): readonly Shape[] {
  const foot = { x: facePx + 8, y: facePx - 10 }
  const [sine, cosine] = [Math.sin, Math.cos].map((of) => of((angleDeg * Math.PI) / 180)) as [
    number,
    number,
  ]
  const reach = Math.min(70, (signPx - 16) / Math.max(sine, 1e-9))
  const eye = { x: roundPx(foot.x + sine * reach), y: roundPx(foot.y - cosine * reach) }
  const level = {
    kind: 'line',
    x1: foot.x - 4,
    y1: foot.y,
    x2: facePx + signPx,
    y2: foot.y,
  } as const
  return [
    { ...level, stroke: 'ink' },
    {
      kind: 'line',
      x1: foot.x,
      y1: foot.y,
      x2: foot.x,
      y2: foot.y - 78,
      stroke: 'soft',
      dash: 'dashed',
    },
    { kind: 'line', x1: foot.x, y1: foot.y, x2: eye.x, y2: eye.y, stroke: 'ink', strokePx: 2 },
    { kind: 'path', d: eyeSign(eye), fill: 'paper', stroke: 'ink', strokePx: 1.5, part: 'eye' },
  ]
}

function eyeSign({ x, y }: PointPx): string {
  const [left, right] = [roundPx(x - 6), roundPx(x + 6)]
  const [up, down] = [roundPx(y - 6), roundPx(y + 6)]
  return `M${left} ${roundPx(y)}Q${roundPx(x)} ${up} ${right} ${roundPx(y)}Q${roundPx(x)} ${down} ${left} ${roundPx(y)}Z`
}
