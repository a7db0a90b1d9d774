import type { FC } from 'hono/jsx'
import { describedBy, FieldFrame } from './field-frame.tsx'

/** Several lines of text: a reason, a finding, a remark. */
export const TextAreaField: FC<{
  name: string
  label: string
  value?: string | undefined
  id?: string
  hint?: string | undefined
  error?: string | undefined
  rows?: number
  isRequired?: boolean
  attributes?: Readonly<Record<string, string>>
}> = (props) => {
  const { name, label, value, id = name, hint, error, rows = 3, isRequired, attributes } = props
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <div class="field-line">
        <textarea
          class="field-input"
          id={id}
          name={name}
          rows={rows}
          aria-required={isRequired ? 'true' : undefined}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy({ id, hint, error })}
          {...attributes}
        >
          {value ?? ''}
        </textarea>
      </div>
    </FieldFrame>
  )
}
