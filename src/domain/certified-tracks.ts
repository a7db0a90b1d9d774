import { certifiedHand } from './certified-hand.ts'
import type { CertifiedTrack } from './certified-strip.ts'
import { compareWornTrack, type FoundMovement } from './compare-worn-track.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { figure } from './figure.ts'
import { orderAlignment } from './order-alignment.ts'
import { faceKinds } from './seal.ts'
import type { WearTrack } from './wear-track.ts'

/** The standing worn tracks of an order, each beside what surveys found. */
export function certifiedTracks(evidence: Evidence): readonly CertifiedTrack[] {
  const tracks = currentOnly(evidence.wearTracks)
  if (tracks.length === 0) return []
  const { found } = orderAlignment(evidence, [])
  return tracks.map((track) => certifiedTrack(track, evidence, found))
}

/** One of them, also while it is being entered. */
export function certifiedTrack(
  track: WearTrack,
  { seal, wearTracks }: Pick<Evidence, 'seal' | 'wearTracks'>,
  movements: readonly FoundMovement[],
): CertifiedTrack {
  const kind = seal.components.find((one) => one.id === track.componentId)?.kind
  const face = faceKinds.find((one) => one === kind) ?? faceKinds[0]
  const { verdict, found } = compareWornTrack({ ...track, faceKind: face }, movements)
  const { standardUncertaintyUm: u, offset } = track
  const widest = Math.max(...track.trackWidths.map((one) => one.mm))
  const um = (value: number) => figure(value, { decimals: 0 })
  return {
    face,
    noseWidthMm: figure(track.noseWidth.mm, 'as-entered'),
    trackWidthMm: figure(widest, 'as-entered'),
    movementUm: um(track.movementUm),
    expandedUncertaintyUm: u === null ? null : um(2 * u),
    offsetMm: offset === null ? null : figure(offset.mm, 'as-entered'),
    offsetHour: track.offsetHour,
    verdict,
    foundUm: found === null ? null : { least: um(found.leastUm), most: um(found.mostUm) },
    instrumentNumber: track.instrument?.number ?? null,
    ...certifiedHand(track, wearTracks),
  }
}
