import type { FC } from 'hono/jsx'
import { brandMark } from '../../src/plots/brand-mark.ts'
import { SvgDrawing } from './svg-drawing.tsx'
import { ViewSwitcher, type ViewSwitcherProps } from './view-switcher.tsx'

export interface TopBarProps {
  readonly brand: string
  readonly homeHref: string
  readonly navLabel: string
  readonly nav: readonly {
    readonly href: string
    readonly label: string
    readonly isCurrent: boolean
  }[]
  readonly person?: { readonly name: string; readonly role: string } | undefined
  /** What the menu is called when nobody is signed in. */
  readonly menuLabel: string
  readonly view: ViewSwitcherProps
  readonly signOut?: { readonly action: string; readonly label: string } | undefined
  readonly signIn?: { readonly href: string; readonly label: string } | undefined
  readonly account?: { readonly href: string; readonly label: string } | undefined
}

/** Mark, ways to go, and a menu with the person, the view, the account and the way out. */
export const TopBar: FC<TopBarProps> = (props) => (
  <header class="top-bar">
    <a class="brand" href={props.homeHref}>
      <SvgDrawing drawing={brandMark(30)} />
      {props.brand}
    </a>
    {props.nav.length > 0 ? (
      <nav class="top-nav" aria-label={props.navLabel}>
        <ul class="top-nav-list">
          {props.nav.map((link) => (
            <li>
              <a
                class="top-nav-link"
                href={link.href}
                aria-current={link.isCurrent ? 'page' : undefined}
              >
                {link.label}
              </a>
            </li>
          ))}
        </ul>
      </nav>
    ) : null}
    <TopMenu {...props} />
  </header>
)

const TopMenu: FC<TopBarProps> = ({ person, menuLabel, view, signOut, signIn, account }) => (
  <details class="top-menu">
    <summary class="top-menu-button">
      {person ? (
        <span>
          <span class="top-menu-name">{person.name}</span>
          <span class="top-menu-role">{person.role}</span>
        </span>
      ) : (
        menuLabel
      )}
    </summary>
    <div class="top-menu-sheet">
      <ViewSwitcher {...view} />
      {signIn ? (
        <p>
          <a class="button button-main" href={signIn.href}>
            {signIn.label}
          </a>
        </p>
      ) : null}
      {account ? (
        <p>
          <a class="button button-plain" href={account.href}>
            {account.label}
          </a>
        </p>
      ) : null}
      {signOut ? (
        <form method="post" action={signOut.action}>
          <button class="button button-plain" type="submit">
            {signOut.label}
          </button>
        </form>
      ) : null}
    </div>
  </details>
)
