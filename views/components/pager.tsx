import type { FC } from 'hono/jsx'

interface PagerLink {
  readonly href: string
  readonly label: string
}

/** Back and forth through a long list. */
export const Pager: FC<{
  label: string
  position: string
  previous?: PagerLink | undefined
  next?: PagerLink | undefined
}> = ({ label, position, previous, next }) => (
  <nav class="pager" aria-label={label}>
    {previous ? (
      <a class="button button-plain" href={previous.href} rel="prev">
        {previous.label}
      </a>
    ) : (
      <span />
    )}
    <span class="soft">{position}</span>
    {next ? (
      <a class="button button-plain" href={next.href} rel="next">
        {next.label}
      </a>
    ) : (
      <span />
    )}
  </nav>
)
