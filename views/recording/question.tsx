import type { Child, FC } from 'hono/jsx'

/** One question of a form for wet hands: a number, what is asked, and large answers. */
export const Question: FC<{ number: number; title: string; children: Child }> = (props) => (
  <section class="question">
    <h2 class="question-title">
      <span class="question-number" aria-hidden="true">
        {props.number}
      </span>
      {props.title}
    </h2>
    {props.children}
  </section>
)
