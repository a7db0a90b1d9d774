import type { Ellipse } from '../science/photo/ellipse.ts'
import type { PhotoReading } from '../science/photo/photo-reading.ts'
import type { PhotoRefusal } from '../science/photo/photo-refusal.ts'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import type { PhotoOptions } from '../science/photo/read-photo.ts'
import { type PhotoLimits, runPhotoThread } from './run-photo-thread.ts'

/** Size of the upright photograph, in pixels. */
export interface PhotoSize {
  readonly imageWidth: number
  readonly imageHeight: number
}

export type PhotoAnswer = (PhotoReading | PhotoRefusal) & PhotoSize

/** Edges that were found; null where they were not. */
export type PhotoEdges = PhotoSize &
  (
    | { readonly outer: Ellipse; readonly inner: Ellipse }
    | { readonly outer: null; readonly inner: null }
  )

/** What is known beside a photograph; an edge that nobody set is null, and is found in it. */
export type PhotoAsked = Omit<PhotoOptions, 'outer' | 'inner'> & {
  readonly outer: EdgeAsSet | null
  readonly inner: EdgeAsSet | null
}

/**
 * Reads a photograph in a thread beside the one that serves pages; a few wait for their turn.
 * @param bytes of the file, at most 30 MB (asked by the caller); they are not changed
 * @param asked what is known beside the photograph, in pixels of the upright photograph, and
 *   onProgress: told the share done, from 0 to 1
 * @throws AppError as runPhotoThread
 */
export function runPhoto(
  bytes: Uint8Array,
  { onProgress, ...asked }: PhotoAsked,
  limits: PhotoLimits = {},
): Promise<PhotoAnswer> {
  return runPhotoThread<PhotoAnswer>(bytes, asked, { ...limits, onProgress })
}

/**
 * Finds the edges of a face in a photograph, and its size.
 * @throws AppError as runPhotoThread
 */
export function runPhotoEdges(bytes: Uint8Array, limits: PhotoLimits = {}): Promise<PhotoEdges> {
  return runPhotoThread<PhotoEdges>(bytes, null, limits)
}
