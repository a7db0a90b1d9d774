import type { FC } from 'hono/jsx'
import { describedBy, FieldFrame } from './field-frame.tsx'

/** One line of input with label, hint, unit and fault; what was typed comes back as typed. */
export const Field: FC<{
  name: string
  label: string
  value?: string | undefined
  id?: string
  hint?: string | undefined
  unit?: string | undefined
  error?: string | undefined
  type?: 'text' | 'password' | 'search' | 'date' | 'time' | 'datetime-local' | 'email'
  inputMode?: 'text' | 'decimal' | 'numeric' | 'search'
  autocomplete?: string
  isRequired?: boolean
  width?: 'number' | 'short' | 'full'
  attributes?: Readonly<Record<string, string>>
}> = (props) => {
  const { name, label, value, id = name, hint, unit, error, type = 'text' } = props
  const { inputMode, autocomplete = 'off', isRequired, width = 'full', attributes } = props
  const widthClass = width === 'full' ? '' : ` field-${width}`
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <div class="field-line">
        <input
          class={`field-input${widthClass}`}
          id={id}
          name={name}
          type={type}
          value={value ?? ''}
          inputmode={inputMode}
          autocomplete={autocomplete}
          aria-required={isRequired ? 'true' : undefined}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy({ id, hint, error })}
          {...attributes}
        />
        {unit ? <span class="field-unit">{unit}</span> : null}
      </div>
    </FieldFrame>
  )
}
