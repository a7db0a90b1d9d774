import type { Child, FC } from 'hono/jsx'

/** Buttons side by side; one below the other on a phone. */
export const ButtonRow: FC<{ children: Child; align?: 'start' | 'end' | 'spread' }> = (props) => {
  const { children, align = 'start' } = props
  return <div class={`button-row button-row-${align}`}>{children}</div>
}
