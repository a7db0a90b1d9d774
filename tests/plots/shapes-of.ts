import type { Drawing, PathShape, TextShape } from '../../src/plots/drawing.ts'

/** The paths of a drawing that bear a name. */
export const pathsOf = (drawing: Drawing, part: string): readonly PathShape[] =>
  drawing.shapes.filter((one): one is PathShape => one.kind === 'path' && one.part === part)

/** Every text of a drawing, in order. */
export const textsOf = (drawing: Drawing): readonly string[] =>
  drawing.shapes.filter((one): one is TextShape => one.kind === 'text').map((one) => one.text)
