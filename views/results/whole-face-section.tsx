import type { FC } from 'hono/jsx'
import type { FacePhoto } from '../../src/domain/face-photo.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import { Notice } from '../components/notice.tsx'
import { minuteText } from '../figures/time-text.ts'
import { SeenPicture } from '../whole-face/seen-picture.tsx'
import { WholeFaceFacts } from '../whole-face/whole-face-facts.tsx'
import { WholeFaceFigure } from '../whole-face/whole-face-figure.tsx'
import { CombinedParts } from '../whole-faces/combined-parts.tsx'
import { words } from '../words/en.ts'

export type WholeFaceShown = {
  readonly wholeFace: WholeFace
  /** Null for one that was combined from others. */
  readonly photo: FacePhoto | null
  readonly photoHref: string
  /** Whether its figures came out the same again; null where nobody asked. */
  readonly isSameAgain: boolean | null
  /** Null for whoever may not ask for it. */
  readonly repeatHref: string | null
}

/** A whole face on the page of its result: map, further figures, what was seen, whence it comes. */
export const WholeFaceSection: FC<{ shown: WholeFaceShown; method: string }> = (props) => {
  const { shown, method } = props
  const { wholeFace, photo, photoHref } = shown
  const w = words.wholeFace
  const { source } = wholeFace
  return (
    <section class="card stack" aria-labelledby="whole-face" id="map">
      <h2 id="whole-face">{w.mapTitle}</h2>
      <WholeFaceFigure wholeFace={wholeFace} id="face" />
      <WholeFaceFacts wholeFace={wholeFace} />
      {photo === null ? null : <SeenPicture wholeFace={wholeFace} photo={photo} href={photoHref} />}
      <h3>{w.sourceTitle}</h3>
      <p>
        {source.kind === 'marked' && source.photoId === null
          ? w.marksAlone
          : w.kindSentence[source.kind]}
        {photo === null
          ? ''
          : ` ${words.facePhoto.taken(photo.recordedByName, minuteText(photo.recordedAt))}.`}
        {source.kind === 'marked' ? ` ${w.marks(source.points.length)}` : ''}
      </p>
      {source.kind === 'combined' ? <CombinedParts source={source} /> : null}
      {photo === null || photo.note === '' ? null : <p>{words.results.note(photo.note)}</p>}
      <p>{keptText(source, method)}</p>
      {photo === null ? null : (
        <p>
          <a class="link-line" href={photoHref}>
            {w.openPhoto}
          </a>
        </p>
      )}
      <Repeat {...shown} />
    </section>
  )
}

function keptText(source: WholeFace['source'], method: string): string {
  const w = words.wholeFace
  if (source.kind === 'combined') return w.keptParts(method)
  return source.photoId === null ? w.keptMarks(method) : w.kept(method)
}

/** A combination is computed again from the records of its parts. */
const Repeat: FC<WholeFaceShown> = ({ isSameAgain, repeatHref }) => {
  const w = words.wholeFace
  if (isSameAgain === null && repeatHref === null) return null
  if (isSameAgain === null) {
    return (
      <p>
        <a class="link-line" href={repeatHref ?? ''}>
          {w.repeat}
        </a>
      </p>
    )
  }
  return (
    <Notice
      kind={isSameAgain ? 'done' : 'note'}
      text={isSameAgain ? w.repeated : w.repeatedOther}
    />
  )
}
