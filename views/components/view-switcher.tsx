import type { FC } from 'hono/jsx'

export interface ViewSwitcherProps {
  readonly action: string
  readonly legend: string
  /** Path of the page to come back to. */
  readonly returnTo: string
  readonly choices: readonly {
    readonly value: 'auto' | 'light' | 'dark' | 'lamp'
    readonly label: string
    readonly isCurrent: boolean
  }[]
}

/** Chooses how pages look; works without script, posts `view` and `returnTo`. */
export const ViewSwitcher: FC<ViewSwitcherProps> = ({ action, legend, returnTo, choices }) => (
  <form class="view-switcher" method="post" action={action}>
    <input type="hidden" name="returnTo" value={returnTo} />
    <fieldset>
      <legend class="view-switcher-legend">{legend}</legend>
      <div class="view-switcher-choices">
        {choices.map((choice) => (
          <button
            class="view-switcher-choice"
            type="submit"
            name="view"
            value={choice.value}
            aria-pressed={choice.isCurrent ? 'true' : 'false'}
          >
            {choice.label}
          </button>
        ))}
      </div>
    </fieldset>
  </form>
)
