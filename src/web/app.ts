import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { getCookie } from 'hono/cookie'
import { csrf } from 'hono/csrf'
import { NONCE, secureHeaders } from 'hono/secure-headers'
import { photoBytesAtMost } from '../domain/photo-bytes.ts'
import type { AppContext, AppEnv, Handler, Shop, View } from './context.ts'
import { guard } from './guard.ts'
import { handlers } from './handlers.ts'
import { onError, onNotFound, onTooLarge } from './on-error.tsx'
import { isOwnOrigin } from './own-origin.ts'
import { uploadLimitBytes } from './read-upload.ts'
import { type Route, type RouteName, routes } from './route-table.ts'
import { serveAsset } from './serve-asset.ts'
import { readSession, readToken } from './session.ts'

/**
 * Forms and records are small; a trace for the calculator may hold a shift of readings, and photos
 * come with instruments.
 */
export const bodyLimitBytes = {
  usual: 256 * 1024,
  trace: 8 * 1024 * 1024,
  upload: uploadLimitBytes,
  photo: photoBytesAtMost + 64 * 1024,
} as const

/** Builds the application around what the composition root hands it. */
export function createApp(shop: Shop): Hono<AppEnv> {
  const app = new Hono<AppEnv>()
  app.onError((error, c) => onError(error, c))
  app.notFound((c) => onNotFound(c))
  app.use(async (c, next) => {
    c.set('shop', shop)
    c.set('view', readView(c))
    await next()
  })
  app.use(routes.showInstrumentFile.path, sandbox)
  app.use(routes.showFacePicture.path, sandbox)
  app.use(headers(shop.origin))
  app.get('/healthz', (c) => c.json({ status: 'ok' }))
  app.get('/assets/*', (c) => serveAsset(c))
  const ownForms = csrf({ origin: (origin, c) => isOwnOrigin(c as AppContext, origin) })
  // The machine interface takes no forms, and looks itself at who sends a session's cookie.
  app.use((c, next) => (c.req.path.startsWith('/api/') ? next() : ownForms(c, next)))
  const [usual, trace, upload] = [limit('usual'), limit('trace'), limit('upload')]
  const photo = limit('photo')
  app.use((c, next) => {
    if (isTrace(c)) return trace(c, next)
    if (isRun(c) && isKnown(c)) return trace(c, next)
    if (isPhoto(c) && isKnown(c)) return photo(c, next)
    return (isUpload(c) ? upload : usual)(c, next)
  })
  for (const name of Object.keys(routes) as RouteName[]) mount(app, routes[name], handlers[name])
  return app
}

function limit(kind: keyof typeof bodyLimitBytes) {
  const maxSize = bodyLimitBytes[kind]
  return bodyLimit({ maxSize, onError: (c) => onTooLarge(c as AppContext) })
}

/** Of those signed in alone: nobody else has a reason to send so much. */
function isUpload(c: AppContext): boolean {
  const isItsPath = /^\/instruments\/\d+\/files$/.test(c.req.path)
  return isItsPath && c.req.method === 'POST' && readSession(c) !== undefined
}

/** Readings of a logger or a balance, for a calculator. */
function isTrace({ req }: AppContext): boolean {
  return [routes.apiPressureChange.path, routes.apiCollected.path].some((one) => one === req.path)
}

/** Readings of a rig, to be kept. */
function isRun({ req }: AppContext): boolean {
  return /^\/api\/v1\/(dynamic-runs\/\d+\/samples|work-orders\/[^/]+\/dynamic-runs)$/.test(req.path)
}

/** Pictures of faces, for the calculator or to be kept. */
function isPhoto({ req }: AppContext): boolean {
  const isRecord =
    /^\/work-orders\/[^/]+\/face-photos$/.test(req.path) ||
    (/^\/api\/v1\/work-orders\/[^/]+\/flatness-readings$/.test(req.path) && isMultipart(req))
  return req.path === routes.apiPhotoFlatness.path || (isRecord && req.method === 'POST')
}

function isMultipart(req: AppContext['req']): boolean {
  return (req.header('content-type') ?? '').toLowerCase().startsWith('multipart/form-data')
}

function isKnown(c: AppContext): boolean {
  return (readSession(c) ?? readToken(c)) !== undefined
}

/** What somebody uploaded is shown without any right: no script, no form, no origin. */
async function sandbox(c: AppContext, next: () => Promise<void>): Promise<void> {
  await next()
  const type = c.res.headers.get('content-type') ?? ''
  if (type.startsWith('text/html')) return
  c.res.headers.set('content-security-policy', "default-src 'none'; sandbox")
}

function mount(app: Hono<AppEnv>, route: Route, handler: Handler): void {
  app.on(route.method.toUpperCase(), route.path, identify(route), guard(route), (c) => handler(c))
}

/** The machine interface reads a token first; pages know the session's cookie alone. */
function identify(route: Route) {
  return async (c: AppContext, next: () => Promise<void>) => {
    const hasToken = route.surface === 'api' && c.req.header('authorization') !== undefined
    const session = hasToken ? undefined : readSession(c)
    c.set('user', hasToken ? readToken(c) : session?.user)
    c.set('sessionHash', session?.hash)
    await next()
  }
}

function headers(origin: string) {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'none'"],
      scriptSrc: [NONCE],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", 'data:'],
      connectSrc: ["'self'"],
      fontSrc: ["'self'"],
      formAction: ["'self'"],
      baseUri: ["'none'"],
      frameAncestors: ["'none'"],
      manifestSrc: ["'self'"],
      workerSrc: ["'self'"],
    },
    // The default, no-referrer, makes native form posts on a plain LAN name look cross-site.
    referrerPolicy: 'same-origin',
    xFrameOptions: 'DENY',
    strictTransportSecurity: origin.startsWith('https:') ? 'max-age=31536000' : false,
  })
}

function readView(c: AppContext): View {
  const view = getCookie(c, 'ringproof-view')
  return view === 'light' || view === 'dark' || view === 'lamp' ? view : 'auto'
}
