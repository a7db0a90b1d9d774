import type { FaceKind } from './seal.ts'
import type { SetEdges } from './whole-face.ts'

/**
 * A photograph of the bands of one face, as it came but for what a phone writes beside the
 * picture. Readings refer to it; it is kept whether or not it could be read.
 */
export type FacePhoto = {
  readonly id: number
  readonly workOrderId: number
  readonly componentId: number
  readonly faceKind: FaceKind
  /** SHA-256 of the stored file. */
  readonly sha256: string
  readonly mediaType: string
  /** Of the upright photograph, pixels. */
  readonly widthPx: number
  readonly heightPx: number
  /** Edges as the program found them; null where it did not. */
  readonly foundEdges: SetEdges | null
  readonly note: string
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
}
