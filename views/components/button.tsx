import type { FC } from 'hono/jsx'

export type ButtonKind = 'main' | 'plain' | 'quiet' | 'stop'

/** Classes of a button or of a link that looks like one. */
export function buttonClass(kind: ButtonKind = 'plain', size?: 'large' | undefined): string {
  return `button button-${kind}${size ? ` button-${size}` : ''}`
}

/** A button; `stop` is for what cannot be taken back: double frame, not colour. */
export const Button: FC<{
  label: string
  kind?: ButtonKind
  size?: 'large'
  type?: 'submit' | 'button'
  name?: string
  value?: string
  isDisabled?: boolean
  attributes?: Readonly<Record<string, string>>
}> = ({ label, kind, size, type = 'submit', name, value, isDisabled, attributes }) => (
  <button
    class={buttonClass(kind, size)}
    type={type}
    name={name}
    value={value}
    disabled={isDisabled === true}
    {...attributes}
  >
    {label}
  </button>
)
