import { checkMark } from './check-mark.ts'
import type { Drawing, Shape } from './drawing.ts'
import { faceMarks, ringShapes } from './finding-face-marks.ts'
import { hardwareMarks } from './finding-hardware-marks.ts'
import { rubberMarks } from './finding-rubber-marks.ts'
import { circlePath } from './path-data.ts'

/** What is drawn: every term of the strip bench. */
export type FindingPictureTerm =
  | keyof typeof faceMarks
  | keyof typeof rubberMarks
  | keyof typeof hardwareMarks
  | 'missing-part'
  | 'nothing-found'

/** The drawings are made on a field of this many px and scaled. */
const field = 96

/**
 * A finding as a small line drawing that needs no colour: what is said of a face on a ring seen
 * from its face, what is said of a secondary seal on its section in the groove, of a spring and of
 * hardware from the side.
 *
 * @param term what was seen
 * @param sizePx width and height, px, 40 to 400
 * @returns the drawing
 * @throws RangeError for a size out of range
 * @example findingPicture('wide-track', 96).widthPx // 96
 */
export function findingPicture(term: FindingPictureTerm, sizePx: number): Drawing {
  if (!(sizePx >= 40 && sizePx <= 400)) {
    throw new RangeError(`findingPicture requires sizePx from 40 to 400, got ${sizePx}`)
  }
  return { widthPx: sizePx, heightPx: sizePx, shapes: shapesOf(term, sizePx / field) }
}

function shapesOf(term: FindingPictureTerm, u: number): readonly Shape[] {
  const centre = { x: 48 * u, y: 48 * u }
  if (term === 'missing-part') {
    const d = circlePath(centre, 34 * u)
    return [{ kind: 'path', d, stroke: 'ink', strokePx: 2 * u, dash: 'dashed' }]
  }
  if (term === 'nothing-found') {
    const d = checkMark(centre, 22 * u)
    return [...ringShapes(u), { kind: 'path', d, stroke: 'ink', strokePx: 3 * u }]
  }
  return { ...faceMarks, ...rubberMarks, ...hardwareMarks }[term](u)
}
