import { compareWornTrack, type FoundMovement, type TrackComparison } from './compare-worn-track.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { type FaceKind, faceKinds } from './seal.ts'

/** A worn track that stands, with the movement that surveys found. */
export type ComparedTrack = {
  readonly id: number
  readonly faceKind: FaceKind
  readonly noseWidthMm: number
  /** The widest of those measured. */
  readonly trackWidthMm: number
  /** Of the land that carries it; null where its diameters are not known. */
  readonly faceWidthMm: number | null
  readonly comparison: TrackComparison
}

/** The newest worn track of each face beside what the surveys of its order found. */
export function comparedTracks(
  { wearTracks, seal }: Pick<Evidence, 'wearTracks' | 'seal'>,
  found: readonly FoundMovement[],
): readonly ComparedTrack[] {
  return faceKinds.flatMap((faceKind) => {
    const face = seal.components.find((one) => one.kind === faceKind)
    const track = currentOnly(wearTracks).findLast((one) => one.componentId === face?.id)
    if (face === undefined || track === undefined) return []
    const { outerDiameterMm, innerDiameterMm } = face
    const isWidthKnown = outerDiameterMm !== null && innerDiameterMm !== null
    return [
      {
        id: track.id,
        faceKind,
        noseWidthMm: track.noseWidth.mm,
        trackWidthMm: Math.max(...track.trackWidths.map((one) => one.mm)),
        faceWidthMm: isWidthKnown ? (outerDiameterMm - innerDiameterMm) / 2 : null,
        comparison: compareWornTrack({ ...track, faceKind }, found),
      },
    ]
  })
}
