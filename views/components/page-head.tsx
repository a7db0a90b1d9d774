import type { Child, FC } from 'hono/jsx'

/** The head of a page: a small line above, the title, a sentence below, acts to the right. */
export const PageHead: FC<{ title: string; over?: string; lead?: string; children?: Child }> = (
  props,
) => (
  <header class="page-head">
    <div>
      {props.over ? <p class="page-head-over">{props.over}</p> : null}
      <h1>{props.title}</h1>
      {props.lead ? <p class="page-head-lead">{props.lead}</p> : null}
    </div>
    {props.children}
  </header>
)
