import { wornTrackMovement } from '../science/runout/worn-track-movement.ts'
import { lengthUse } from './length-use.ts'
import { methods } from './methods.ts'
import type { StripContext } from './strip-context.ts'
import type { NewWearTrack, WearTrack } from './wear-track.ts'

/** A track with all that is computed, before the store gives it an id, a name and a time. */
export type CompleteWearTrack = Omit<
  WearTrack,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Adds to a parsed track how far the face moved that wore it: by its widest place.
 * @throws RangeError where the track was not parsed in this context
 */
export function completeWearTrack(track: NewWearTrack, context: StripContext): CompleteWearTrack {
  const { noseWidth, trackWidths, instrumentId } = track
  const read = lengthUse(instrumentId, [noseWidth, ...trackWidths], context)
  const ofOneUm = read?.standardUncertaintyUm ?? null
  const ofOneMm = ofOneUm === null ? undefined : ofOneUm / 1000
  return {
    ...track,
    ...wornTrackMovement({
      trackWidthMm: Math.max(...trackWidths.map((one) => one.mm)),
      noseWidthMm: noseWidth.mm,
      trackStandardUncertaintyMm: ofOneMm,
      noseStandardUncertaintyMm: ofOneMm,
    }),
    instrument: read?.use ?? null,
    method: methods.wornTrack,
  }
}
