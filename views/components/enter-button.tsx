import type { FC } from 'hono/jsx'

/**
 * What the Enter key presses. A browser takes the first submit button of a form for it: where
 * another one stands before the main one, this goes first, and says and does the same as the main
 * one. It is not seen and no stop of the Tab key, but drawn, since some browsers press nothing
 * that is not.
 */
export const EnterButton: FC<{ label: string }> = ({ label }) => (
  <button class="enter-button" type="submit" tabindex={-1}>
    {label}
  </button>
)
