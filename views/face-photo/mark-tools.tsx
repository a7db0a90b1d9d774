import type { Child, FC } from 'hono/jsx'
import { words } from '../words/en.ts'

/**
 * What a thumb needs while it taps along the bands, right below the picture: which order the next
 * mark has, and the way back. It lives by its script, and is hidden without.
 */
export const MarkTools: FC = () => {
  const w = words.facePhoto
  return (
    <div class="photo-kind photo-kind-marked">
      <div class="mark-tools" data-order-tools="" hidden>
        <div class="mark-order">
          <Step by="-0.5" sign="−½" label={w.lessHalf} />
          <label class="mark-order-now">
            <span class="small">{w.order}</span>
            <input
              class="field-input"
              id="mark-order"
              data-order=""
              value="1"
              inputmode="decimal"
              autocomplete="off"
            />
          </label>
          <Step by="0.5" sign="+½" label={w.moreHalf} />
          <button type="button" class="button button-plain mark-next" data-mark-act="next">
            {w.nextBand}
          </button>
        </div>
        <div class="button-row">
          <Act name="add">{w.addMark}</Act>
          <Act name="undo">{w.undo}</Act>
          <Act name="remove">{w.clear}</Act>
        </div>
        <p>
          <span class="strong">
            {w.markCount}: <output data-mark-count="">0</output>
          </span>{' '}
          <span class="soft">{w.markLeast}</span>
        </p>
        <label class="check" for="rings-move">
          <input class="check-box" type="checkbox" id="rings-move" data-rings-move="" />
          <span>{w.ringsMove}</span>
        </label>
      </div>
    </div>
  )
}

const Step: FC<{ by: string; sign: string; label: string }> = ({ by, sign, label }) => (
  <button
    type="button"
    class="stepper-button"
    data-order-step={by}
    aria-label={`${sign} ${label}`}
    aria-controls="mark-order"
  >
    {sign}
  </button>
)

const Act: FC<{ name: 'add' | 'undo' | 'remove'; children: Child }> = ({ name, children }) => (
  <button type="button" class="button button-plain" data-mark-act={name}>
    {children}
  </button>
)
