import type { FC } from 'hono/jsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { words } from '../words/en.ts'
import { MarkTools } from './mark-tools.tsx'
import { overlayOf } from './overlay-of.ts'
import type { FacePhotoForm } from './page-props.ts'
import { Rings } from './rings.tsx'

const ends = ['middle', 'right', 'top', 'left', 'bottom'] as const

/**
 * The photograph with what is laid over it. The picture is an image of its own, so that the browser
 * turns it upright; all that lies over it is drawn in its pixels. What can be moved is drawn by the
 * page's scripts from the fields of the form, which hold the truth.
 */
export const PhotoStage: FC<{ form: FacePhotoForm }> = ({ form }) => {
  const w = words.facePhoto
  const { photo, pictureHref, answer } = form
  const { widthPx, heightPx } = photo
  const seen = answer === null ? null : overlayOf(form, answer.outcome)
  return (
    <section class="stack" aria-label={w.stage}>
      <ZoomTools />
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, not for a picture */}
      <div class="photo-scroller" data-scroller="" tabindex={0} role="group" aria-label={w.stage}>
        <div
          class="photo-stage"
          data-stage=""
          data-width={widthPx}
          data-height={heightPx}
          {...handleNames()}
        >
          <img
            class="photo-picture"
            src={pictureHref}
            width={widthPx}
            height={heightPx}
            alt={w.stage}
            draggable={false}
          />
          {/* Read without a script: the answer came with the page, and so does what was seen. */}
          {seen === null ? null : (
            <noscript>
              <div class="photo-over">
                <SvgDrawing drawing={seen} />
              </div>
            </noscript>
          )}
          <svg
            class="photo-over"
            data-over=""
            viewBox={`0 0 ${widthPx} ${heightPx}`}
            aria-hidden="true"
          >
            <g data-seen=""></g>
            <Rings values={form.values} />
            <g data-lines=""></g>
          </svg>
          <div data-handles=""></div>
        </div>
      </div>
      <div class="photo-progress" data-progress="" hidden>
        <label for="photo-progress">{w.working}</label>
        <progress id="photo-progress" max={1} value={0}></progress>
      </div>
      <p class="notice notice-note" role="alert" data-lost="" hidden>
        {w.lost}
      </p>
      <MarkTools />
      <p class="small soft" data-stage-hint="" hidden>
        {w.stageHint}
      </p>
    </section>
  )
}

const ZoomTools: FC = () => {
  const w = words.facePhoto
  const names = { out: w.zoomOut, in: w.zoomIn, all: w.zoomAll }
  return (
    <div class="photo-tools" data-zoom-tools="" hidden>
      {Object.entries(names).map(([how, name]) => (
        <button type="button" class="button button-plain" data-zoom={how}>
          {name}
        </button>
      ))}
    </div>
  )
}

/** The names of all that can be moved: scripts carry no words. */
function handleNames(): Record<string, string> {
  const { handle, markLabel } = words.facePhoto
  const rings = (['outer', 'inner'] as const).flatMap((edge) =>
    ends.map((end) => [`data-${edge}-${end}`, `${handle[edge]}, ${handle[end]}`] as const),
  )
  return {
    ...Object.fromEntries(rings),
    'data-mark-label': markLabel('#', '%'),
    'data-grid-middle': `${handle.grid}, ${handle.middle}`,
    'data-grid-turn': `${handle.grid}, ${handle.turn}`,
    'data-grid-space': `${handle.grid}, ${handle.space}`,
  }
}
