import type { Child, FC } from 'hono/jsx'

/** Says that there is nothing, and what to do about it. */
export const EmptyState: FC<{ title: string; text?: string; children?: Child }> = (props) => (
  <div class="empty">
    <p class="strong">{props.title}</p>
    {props.text ? <p class="empty-text">{props.text}</p> : null}
    {props.children}
  </div>
)
