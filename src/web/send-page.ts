import { raw } from 'hono/html'
import type { HtmlEscapedString } from 'hono/utils/html'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import type { Frame } from '../../views/page.tsx'
import type { AppContext } from './context.ts'
import { returnPlace } from './return-place.ts'

type Markup = HtmlEscapedString | Promise<HtmlEscapedString>

/** Answers a whole page: the doctype is ours to add, else browsers fall into quirks mode. */
export async function sendPage(
  c: AppContext,
  page: Markup,
  status: ContentfulStatusCode = 200,
): Promise<Response> {
  c.header('cache-control', 'no-store')
  return c.html(raw(`<!doctype html>${await page}`), status)
}

/** Answers a fragment for htmx to put in place. */
export async function sendFragment(
  c: AppContext,
  fragment: Markup,
  status: ContentfulStatusCode = 200,
): Promise<Response> {
  c.header('cache-control', 'no-store')
  return c.html(raw(String(await fragment)), status)
}

/** True where htmx asks for a part; Back asks for the whole page without that header. */
export function asksForFragment(c: AppContext): boolean {
  return c.req.header('hx-request-type') === 'partial'
}

/** What the page's surroundings need to know. `scripts` are names in `views/browser` of its own. */
export function frameOf(c: AppContext, scripts: readonly string[] = []): Frame {
  const { assets, isInvented } = c.var.shop
  const user = c.var.user
  return {
    path: c.req.path,
    returnTo: returnPlace(c),
    view: c.var.view,
    person: user === undefined ? undefined : { name: user.displayName, role: user.role },
    isInvented,
    nonce: c.get('secureHeadersNonce') ?? '',
    icon: assets.icon,
    style: assets.style,
    htmx: assets.htmx,
    scripts: ['view-switch', ...scripts].map((name) => assets.script(name)),
  }
}
