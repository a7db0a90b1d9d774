import type { FC } from 'hono/jsx'
import { describedBy } from './field-frame.tsx'

/** One box to tick; the whole line is the target. */
export const CheckField: FC<{
  name: string
  label: string
  value?: string
  isChecked?: boolean
  id?: string
  hint?: string | undefined
  error?: string | undefined
  attributes?: Readonly<Record<string, string>>
}> = (props) => {
  const { name, label, value = 'on', isChecked, id = name, hint, error, attributes } = props
  return (
    <div class={error ? 'field field-faulty' : 'field'}>
      <label class="check" for={id}>
        <input
          class="check-box"
          type="checkbox"
          id={id}
          name={name}
          value={value}
          checked={isChecked === true}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy({ id, hint, error })}
          {...attributes}
        />
        <span>{label}</span>
      </label>
      {hint ? (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {error ? (
        <p class="field-error" id={`${id}-error`}>
          {error}
        </p>
      ) : null}
    </div>
  )
}
