import type { FC } from 'hono/jsx'
import type { FacePhoto } from '../src/domain/face-photo.ts'
import type { FlatnessReading } from '../src/domain/flatness.ts'
import { minuteText } from './figures/time-text.ts'
import { WholeFaceFacts } from './whole-face/whole-face-facts.tsx'
import { WholeFaceFigure } from './whole-face/whole-face-figure.tsx'
import { words } from './words/en.ts'

/** The maps of the faces that were read whole, each folded away, and the photographs that are kept. */
export const OrderMaps: FC<{
  readings: readonly FlatnessReading[]
  photos: readonly FacePhoto[]
  orderNumber: string
  /** Whether this person may read a photograph. */
  canRead: boolean
}> = ({ readings, photos, orderNumber, canRead }) => {
  const { wholeFace: w, trade } = words
  const mapped = readings.filter((one) => one.replacedById === null && one.wholeFace !== null)
  return (
    <>
      {mapped.map((one) => (
        <details class="fold">
          <summary>
            {w.mapOf(
              trade.faceKind[one.faceKind],
              trade.condition[one.condition].toLowerCase(),
              minuteText(one.recordedAt),
            )}
          </summary>
          {one.wholeFace === null ? null : (
            <div class="fold-body stack">
              <WholeFaceFigure wholeFace={one.wholeFace} id={`map-${one.id}`} />
              <WholeFaceFacts wholeFace={one.wholeFace} />
            </div>
          )}
        </details>
      ))}
      {hasTwoOfOneFace(mapped) ? (
        <p>
          <a href={`/work-orders/${orderNumber}/whole-faces`}>{words.wholeFaces.link}</a>
        </p>
      ) : null}
      <Photographs photos={photos} orderNumber={orderNumber} canRead={canRead} />
    </>
  )
}

function hasTwoOfOneFace(mapped: readonly FlatnessReading[]): boolean {
  return new Set(mapped.map((one) => one.componentId)).size < mapped.length
}

const Photographs: FC<{
  photos: readonly FacePhoto[]
  orderNumber: string
  canRead: boolean
}> = ({ photos, orderNumber, canRead }) => {
  const { facePhoto: w, trade } = words
  if (photos.length === 0) return null
  return (
    <details class="fold">
      <summary>{`${w.photosTitle}: ${photos.length}`}</summary>
      <div class="fold-body stack">
        <p class="small soft">{w.photosHint}</p>
        <ul class="photo-list">
          {photos.map((one) => {
            const at = `/work-orders/${orderNumber}/face-photos/${one.id}`
            const name = w.photoOf(trade.faceKind[one.faceKind], minuteText(one.recordedAt))
            return (
              <li>
                <a href={`${at}/picture`}>
                  <img class="photo-small" src={`${at}/picture`} loading="lazy" alt={name} />
                </a>
                <span>
                  {name}
                  {canRead ? (
                    <a class="link-line" href={at}>
                      {w.readIt}
                    </a>
                  ) : null}
                </span>
              </li>
            )
          })}
        </ul>
      </div>
    </details>
  )
}
