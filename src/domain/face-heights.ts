import type { Evidence } from './evidence.ts'
import type { ReadingCondition } from './flatness.ts'
import { type FaceKind, faceKinds } from './seal.ts'
import { standingValues } from './standing.ts'

/** A face height that was read, with what is left above the smallest that the seal allows. */
export type ReadFaceHeight = {
  readonly face: FaceKind
  readonly condition: ReadingCondition
  readonly mm: number
  readonly minimumMm: number | null
  /** Below 0 where the face is too low; null where no smallest is stated. */
  readonly marginMm: number | null
}

/** The newest height of each face as found and as left, as it was read with an instrument. */
export function faceHeights({
  measuredValues,
  seal,
}: Pick<Evidence, 'measuredValues' | 'seal'>): readonly ReadFaceHeight[] {
  const read = standingValues(measuredValues).filter((one) => one.characteristic === 'face-height')
  return faceKinds.flatMap((face) => {
    const component = seal.components.find((one) => one.kind === face)
    const minimumMm = component?.minimumNoseHeightMm ?? null
    return read
      .filter((one) => one.componentId === component?.id)
      .map(({ condition, valueUm }) => {
        const mm = valueUm / 1000
        const marginMm = minimumMm === null ? null : mm - minimumMm
        return { face, condition, mm, minimumMm, marginMm }
      })
  })
}
