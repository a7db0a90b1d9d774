import type { FC } from 'hono/jsx'
import { type ButtonKind, buttonClass } from './button.tsx'

/** A link that leads on, with the size of a button. */
export const ButtonLink: FC<{
  href: string
  label: string
  kind?: ButtonKind
  size?: 'large'
  attributes?: Readonly<Record<string, string>>
}> = ({ href, label, kind, size, attributes }) => (
  <a class={buttonClass(kind, size)} href={href} {...attributes}>
    {label}
  </a>
)
