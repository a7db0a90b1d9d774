import type { Child, FC } from 'hono/jsx'
import type { Role } from '../src/domain/role.ts'
import { InventedBanner } from './components/invented-banner.tsx'
import { TopBar } from './components/top-bar.tsx'
import { words } from './words/en.ts'

/** What every page needs to know about the request. */
export type Frame = {
  readonly path: string
  /** Where the switch of the view leads back to. */
  readonly returnTo: string
  readonly view: 'auto' | 'light' | 'dark' | 'lamp'
  readonly person: { readonly name: string; readonly role: Role } | undefined
  readonly isInvented: boolean
  readonly nonce: string
  readonly icon: string
  readonly style: string
  readonly htmx: string
  /** Addresses of the scripts in `views/browser` that this page asks for. */
  readonly scripts: readonly string[]
}

export type PageProps = {
  readonly frame: Frame
  readonly title: string
  readonly width?: 'narrow' | 'wide'
  readonly children: Child
}

/** The whole document around a page's content. */
export const Page: FC<PageProps> = ({ frame, title, width, children }) => (
  <html lang="en" {...(frame.view === 'auto' ? {} : { 'data-view': frame.view })}>
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <title>{`${title} · ${words.chrome.brand}`}</title>
      <link rel="icon" type="image/svg+xml" href={frame.icon} />
      <link rel="stylesheet" href={frame.style} />
      <script src={frame.htmx} nonce={frame.nonce} defer></script>
      {frame.scripts.map((script) => (
        <script type="module" src={script} nonce={frame.nonce}></script>
      ))}
    </head>
    <body>
      <a class="skip-link" href="#main">
        {words.chrome.skip}
      </a>
      <TopBar {...topBar(frame)} />
      {frame.isInvented ? (
        <InventedBanner text={words.chrome.invented} detail={words.chrome.inventedDetail} />
      ) : null}
      <main id="main" class={width === undefined ? 'page' : `page page-${width}`}>
        {children}
      </main>
    </body>
  </html>
)

function topBar(frame: Frame) {
  const { chrome } = words
  const links = frame.person === undefined ? [] : navigation[frame.person.role]
  // An order's evidence is the inspector's place, though its address is the order's.
  const place = frame.path.endsWith('/inspection') ? '/inspection' : frame.path
  return {
    brand: chrome.brand,
    homeHref: '/',
    navLabel: chrome.navLabel,
    menuLabel: chrome.menu,
    nav: links.map(([href, label]) => ({
      href,
      label,
      isCurrent: place === href || place.startsWith(`${href}/`),
    })),
    view: {
      action: '/view',
      legend: chrome.view.legend,
      returnTo: frame.returnTo,
      choices: (['auto', 'light', 'dark', 'lamp'] as const).map((value) => ({
        value,
        label: chrome.view[value],
        isCurrent: frame.view === value,
      })),
    },
    ...(frame.person === undefined
      ? { signIn: { href: '/sign-in', label: chrome.signIn } }
      : {
          person: { name: frame.person.name, role: chrome.roles[frame.person.role] },
          account: { href: '/account', label: chrome.nav.account },
          signOut: { action: '/sign-out', label: chrome.signOut },
        }),
  }
}

const { nav } = words.chrome
const navigation: Readonly<Record<Role, readonly (readonly [string, string])[]>> = {
  technician: [
    ['/bench', nav.bench],
    ['/work-orders', nav.workOrders],
    ['/calculator', nav.calculator],
    ['/instruments', nav.instruments],
    ['/certificates', nav.certificates],
  ],
  inspector: [
    ['/inspection', nav.inspection],
    ['/bench', nav.bench],
    ['/work-orders', nav.workOrders],
    ['/certificates', nav.certificates],
    ['/instruments', nav.instruments],
    ['/limit-sets', nav.limitSets],
    ['/calculator', nav.calculator],
    ['/audit', nav.audit],
  ],
  customer: [
    ['/my-seals', nav.mySeals],
    ['/certificates', nav.certificates],
    ['/calculator', nav.calculator],
  ],
  manager: [
    ['/bench', nav.bench],
    ['/work-orders', nav.workOrders],
    ['/inspection', nav.inspection],
    ['/customers', nav.customers],
    ['/certificates', nav.certificates],
    ['/instruments', nav.instruments],
    ['/limit-sets', nav.limitSets],
    ['/people', nav.people],
    ['/audit', nav.audit],
  ],
}
