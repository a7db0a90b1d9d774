import type { FC } from 'hono/jsx'

/** The band that marks a page of the invented workshop. */
export const InventedBanner: FC<{ text: string; detail?: string }> = ({ text, detail }) => (
  <aside class="invented" aria-label={text}>
    <span class="invented-word">{text}</span>
    {detail ? <span class="invented-detail">{detail}</span> : null}
  </aside>
)
