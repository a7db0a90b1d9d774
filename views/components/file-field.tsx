import type { FC } from 'hono/jsx'
import { describedBy, FieldFrame } from './field-frame.tsx'

/** One file to be chosen, on a phone from its camera too. A browser never fills it in again. */
export const FileField: FC<{
  name: string
  label: string
  accept: string
  id?: string
  /** Opens the camera at once, where there is one. */
  capture?: 'environment'
  hint?: string | undefined
  error?: string | undefined
}> = ({ name, label, accept, id = name, capture, hint, error }) => (
  <FieldFrame id={id} label={label} hint={hint} error={error}>
    <div class="field-line">
      <input
        class="field-input"
        id={id}
        name={name}
        type="file"
        accept={accept}
        capture={capture}
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={describedBy({ id, hint, error })}
      />
    </div>
  </FieldFrame>
)
