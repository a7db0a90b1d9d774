import type { Child, FC } from 'hono/jsx'

/** The place below the buttons for what stands behind an answer; drawn anew along with it. */
export const AnswerMoreFrame: FC<{ children: Child; isSwap?: boolean | undefined }> = (props) => (
  <div
    class="answer-more stack"
    id="answer-more"
    {...(props.isSwap ? { 'hx-swap-oob': 'true' } : {})}
  >
    {props.children}
  </div>
)
