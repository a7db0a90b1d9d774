import type { Child, FC } from 'hono/jsx'

export interface FieldTexts {
  id: string
  label: string
  hint?: string | undefined
  error?: string | undefined
}

/** Ids of what describes a control, for `aria-describedby`: the fault first, then the hint. */
export function describedBy({ id, hint, error }: Omit<FieldTexts, 'label'>): string | undefined {
  const ids = [error ? `${id}-error` : '', hint ? `${id}-hint` : ''].filter((part) => part !== '')
  return ids.length > 0 ? ids.join(' ') : undefined
}

/** What stands around every control: label above, hint, the control, the fault in a sentence. */
export const FieldFrame: FC<FieldTexts & { children: Child }> = (props) => {
  const { id, label, hint, error, children } = props
  return (
    <div class={error ? 'field field-faulty' : 'field'}>
      <label class="field-label" for={id}>
        {label}
      </label>
      {hint ? (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {children}
      {error ? (
        <p class="field-error" id={`${id}-error`}>
          {error}
        </p>
      ) : null}
    </div>
  )
}
