import type { FC } from 'hono/jsx'
import { describedBy, FieldFrame } from './field-frame.tsx'

/** A choice from a long list; `emptyLabel` adds a first line that chooses nothing. */
export const SelectField: FC<{
  name: string
  label: string
  options: readonly { readonly value: string; readonly label: string }[]
  value?: string | undefined
  id?: string
  hint?: string | undefined
  error?: string | undefined
  emptyLabel?: string
  isRequired?: boolean
  width?: 'short' | 'full'
  attributes?: Readonly<Record<string, string>>
}> = (props) => {
  const { name, label, options, value, id = name, hint, error, emptyLabel } = props
  const { isRequired, width = 'full', attributes } = props
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <div class="field-line">
        <select
          class={width === 'full' ? 'field-input' : `field-input field-${width}`}
          id={id}
          name={name}
          aria-required={isRequired ? 'true' : undefined}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy({ id, hint, error })}
          {...attributes}
        >
          {emptyLabel === undefined ? null : <option value="">{emptyLabel}</option>}
          {options.map((option) => (
            <option value={option.value} selected={option.value === value}>
              {option.label}
            </option>
          ))}
        </select>
      </div>
    </FieldFrame>
  )
}
