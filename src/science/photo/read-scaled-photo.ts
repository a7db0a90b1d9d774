import type { Picture } from './linear-channels.ts'
import type { PhotoReading } from './photo-reading.ts'
import type { PhotoRefusal } from './photo-refusal.ts'
import type { EdgeAsSet } from './prepare-face.ts'
import { type PhotoOptions, readPhoto } from './read-photo.ts'
import { scaleEllipse } from './scale-ellipse.ts'

const scalePlace = ([x, y]: readonly [number, number], by: number) =>
  [(x + 0.5) * by - 0.5, (y + 0.5) * by - 0.5] as const

const scaleEdge = (edge: EdgeAsSet, by: number): EdgeAsSet =>
  'length' in edge ? edge.map((place) => scalePlace(place, by)) : scaleEllipse(edge, by)

/**
 * Reads a picture that was made smaller, with all places in pixels of the photograph.
 *
 * @param picture upright
 * @param scale pixels of the picture for one of the photograph, above 0, at most 1
 * @param options as readPhoto takes them, in pixels of the photograph
 * @returns as readPhoto, edges and band lines in pixels of the photograph
 * @throws RangeError as readPhoto does
 * Source: as readPhoto.
 * @example readScaledPhoto({ data: new Uint8Array(3), width: 1, height: 1 }, 0.5,
 *   { outer: [], inner: [] }).kind // refused
 */
export function readScaledPhoto(
  picture: Picture,
  scale: number,
  options: PhotoOptions,
): PhotoReading | PhotoRefusal {
  const answer = readPhoto(picture, {
    ...options,
    outer: scaleEdge(options.outer, scale),
    inner: scaleEdge(options.inner, scale),
  })
  if (answer.kind === 'refused' || scale === 1) return answer
  return {
    ...answer,
    outer: scaleEllipse(answer.outer, 1 / scale),
    inner: scaleEllipse(answer.inner, 1 / scale),
    bandLines: answer.bandLines.map((line) => ({
      ...line,
      points: line.points.map((place) => scalePlace(place, 1 / scale)),
    })),
  }
}
