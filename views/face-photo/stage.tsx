import type { FC } from 'hono/jsx'
import { words } from '../words/en.ts'
import type { FacePhotoForm } from './page-props.ts'

/**
 * The photograph with what is laid over it. The picture is an image of its own, so that the browser
 * turns it upright; all that lies over it is drawn in its pixels. What can be moved is drawn by the
 * page's scripts from the fields of the form, which hold the truth.
 */
export const PhotoStage: FC<{ form: FacePhotoForm }> = ({ form }) => {
  const w = words.facePhoto
  const { photo, pictureHref } = form
  const { handle } = w
  const names = ['middle', 'right', 'top', 'left', 'bottom'] as const
  return (
    <section class="stack" aria-label={w.stage}>
      <div class="photo-tools" data-zoom-tools="" hidden>
        <button type="button" class="button button-plain" data-zoom="out">
          {w.zoomOut}
        </button>
        <button type="button" class="button button-plain" data-zoom="in">
          {w.zoomIn}
        </button>
        <button type="button" class="button button-plain" data-zoom="all">
          {w.zoomAll}
        </button>
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, not for a picture */}
      <div class="photo-scroller" data-scroller="" tabindex={0} role="group" aria-label={w.stage}>
        <div
          class="photo-stage"
          data-stage=""
          data-width={photo.widthPx}
          data-height={photo.heightPx}
          data-mark-label={w.markLabel('#', '%')}
          data-grid-middle={`${handle.grid}, ${handle.middle}`}
          data-grid-turn={`${handle.grid}, ${handle.turn}`}
          data-grid-space={`${handle.grid}, ${handle.space}`}
          {...Object.fromEntries(
            (['outer', 'inner'] as const).flatMap((edge) =>
              names.map((name) => [`data-${edge}-${name}`, `${handle[edge]}, ${handle[name]}`]),
            ),
          )}
        >
          <img
            class="photo-picture"
            src={pictureHref}
            width={photo.widthPx}
            height={photo.heightPx}
            alt={w.stage}
          />
          <svg
            class="photo-over"
            data-over=""
            viewBox={`0 0 ${photo.widthPx} ${photo.heightPx}`}
            aria-hidden="true"
          >
            <g data-seen=""></g>
            <g data-edges=""></g>
            <g data-lines=""></g>
          </svg>
          <div data-handles=""></div>
        </div>
      </div>
      <p class="small soft">{w.stageHint}</p>
      <div class="photo-progress" data-progress="" hidden>
        <label for="photo-progress">{w.working}</label>
        <progress id="photo-progress" max={1} value={0}></progress>
      </div>
    </section>
  )
}
