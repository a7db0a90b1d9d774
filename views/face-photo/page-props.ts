import type { FacePhoto } from '../../src/domain/face-photo.ts'
import type { Fault } from '../../src/domain/fault.ts'
import type { Component } from '../../src/domain/seal.ts'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import type { Replaced } from '../recording/correction-fields.tsx'
import type { FaceChoice } from '../recording/face-choice.ts'
import type { InstrumentChoice } from '../recording/instrument-field.tsx'
import type { FacePhotoValues } from './form-values.ts'

/** All that the page needs on which a photograph is asked for. */
export type FacePhotoUpload = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly faces: readonly FaceChoice[]
  readonly faceId: string
  readonly note: string
  readonly formKey: string
  readonly faults: readonly Fault[]
}

/** All that the page needs on which a photograph is read. */
export type FacePhotoForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly limitSetName: string
  readonly photo: FacePhoto
  readonly pictureHref: string
  readonly face: Component
  /** The other photographs of this face: one of them may be the pressed one. */
  readonly others: readonly FacePhoto[]
  readonly choice: InstrumentChoice
  readonly values: FacePhotoValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  /** Null until it is asked for. */
  readonly answer: WholeFaceAnswer | null
  readonly replaced: Replaced | null
}
