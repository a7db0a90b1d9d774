import type { FaceRead } from '../domain/compute-whole-face.ts'
import type { Fault } from '../domain/fault.ts'
import { faultOfMarks } from '../domain/fault-of-marks.ts'
import type { NewWholeFaceReading } from '../domain/parse-whole-face-reading.ts'
import type { MarkedSource, PhotoSource } from '../domain/whole-face.ts'
import { withGapSign } from '../domain/with-gap-sign.ts'
import { readMarks } from '../science/marks/read-marks.ts'
import type { PhotoRefusal } from '../science/photo/photo-refusal.ts'
import { pressTest } from '../science/surface/press-test.ts'
import { runPhoto } from './run-photo.ts'
import type { PhotoLimits } from './run-photo-thread.ts'

/** What two photographs said of the sign. */
export type PressSaid = { readonly isDecided: boolean; readonly movedBands: number }

export type WholeFaceRead =
  | { readonly kind: 'read'; readonly read: FaceRead; readonly press: PressSaid | null }
  | { readonly kind: 'faulty'; readonly faults: readonly Fault[] }
  | { readonly kind: 'refused'; readonly refusal: PhotoRefusal; readonly isSecond: boolean }

/**
 * Does what was asked with a photograph. The same source gives the same figures, bit for bit.
 * @param bytesOf the stored bytes of a photograph of the order
 * @throws AppError as runPhoto
 */
export async function readWholeFace(
  asked: Pick<NewWholeFaceReading, 'source' | 'outerDiameterMm' | 'innerDiameterMm'>,
  bytesOf: (photoId: number) => Uint8Array,
  limits: PhotoLimits = {},
): Promise<WholeFaceRead> {
  const { source } = asked
  const radiusRatio = asked.innerDiameterMm / asked.outerDiameterMm
  if (source.kind === 'line-grid') return { kind: 'read', read: null, press: null }
  if (source.kind === 'marked') return readMarked(source, radiusRatio)
  return await readPhotographs(source, radiusRatio, bytesOf, limits)
}

function readMarked(source: MarkedSource, radiusRatio: number): WholeFaceRead {
  const { points, increasingTowards, viewingAngleDeg, outer, inner } = source
  const reading = readMarks(points, {
    outer,
    inner,
    radiusRatio,
    // Where nobody could tell, the map may be upside down, and says so.
    doOrdersRiseWithGap: increasingTowards !== 'gap-closes',
    viewingAngleDeg: viewingAngleDeg ?? undefined,
  })
  if (reading.kind === 'refused') return { kind: 'faulty', faults: [faultOfMarks(reading)] }
  return { kind: 'read', read: reading, press: null }
}

async function readPhotographs(
  source: PhotoSource,
  radiusRatio: number,
  bytesOf: (photoId: number) => Uint8Array,
  { onProgress, ...limits }: PhotoLimits,
): Promise<WholeFaceRead> {
  const { photoId, outer, inner, wedge, pressed } = source
  const viewingAngleDeg = source.viewingAngleDeg ?? undefined
  const part = (from: number, to: number) => (share: number) =>
    onProgress?.(from + share * (to - from))
  const half = pressed === null ? 1 : 0.5
  const asked = { outer, inner, wedge: wedge ?? undefined, viewingAngleDeg, radiusRatio }
  const bytes = bytesOf(photoId)
  const first = await runPhoto(bytes, { ...asked, onProgress: part(0, half) }, limits)
  if (first.kind === 'refused') return { kind: 'refused', refusal: first, isSecond: false }
  if (pressed === null) return { kind: 'read', read: first, press: null }
  const second = await runPhoto(
    bytesOf(pressed.photoId),
    {
      outer: pressed.outer,
      inner: pressed.inner,
      viewingAngleDeg,
      radiusRatio,
      onProgress: part(half, 1),
    },
    limits,
  )
  if (second.kind === 'refused') return { kind: 'refused', refusal: second, isSecond: true }
  const { sign, movedBands } = pressTest(first.gap, second.gap)
  if (sign < 0 && first.isSignKnown) {
    const fault = { field: 'wedge.opensTowardsDeg', kind: 'contradicts-press' } as const
    return { kind: 'faulty', faults: [fault] }
  }
  const press = { isDecided: sign !== 0, movedBands }
  return { kind: 'read', read: sign === 0 ? first : withGapSign(first, sign), press }
}
