import { HTTPException } from 'hono/http-exception'
import { ErrorPage } from '../../views/error-page.tsx'
import { errorSentence, errorTitles } from '../../views/words/en/errors.ts'
import { AppError } from '../domain/app-error.ts'
import { InputRefused } from './api/input-refused.ts'
import { SomethingMissing } from './api/something-missing.ts'
import { WrongType } from './api/wrong-type.ts'
import type { AppContext } from './context.ts'
import { inputProblem, type ProblemTitle, problem, statusOf } from './problem.ts'
import { returnPlace } from './return-place.ts'
import { frameOf, sendPage } from './send-page.ts'
import { SignedOut } from './signed-out.ts'

/** Turns whatever a handler threw into the answer its surface speaks. */
export async function onError(thrown: Error, c: AppContext): Promise<Response> {
  const error = isForeignForm(thrown) ? new AppError('forbidden', 'cross-site') : thrown
  const isApi = c.req.path.startsWith('/api/')
  if (error instanceof SignedOut) return signedOut(c, isApi)
  if (error instanceof InputRefused) return inputProblem(error.faults)
  if (error instanceof WrongType) return problem('wrong-type', 415, 'wrong-type')
  if (error instanceof SomethingMissing) {
    const extra = { missing: error.missing }
    return problem('conflict', 409, 'something-missing', { extra })
  }
  if (error instanceof AppError) {
    const { kind, reason, details } = error
    const status = statusOf[kind]
    const waitS = details.waitS
    if (isApi) {
      const headers = waitS === undefined ? {} : { 'retry-after': String(waitS) }
      return problem(kind, status, reason, { details, headers })
    }
    if (waitS !== undefined) c.header('retry-after', String(waitS))
    return errorPage(c, kind, status, errorSentence(reason, details))
  }
  return internal(error, c, isApi)
}

/** The guard against forms of other sites throws in its own words. */
function isForeignForm(error: Error): boolean {
  return error instanceof HTTPException && error.status === 403
}

/** Nothing stands at this address, or it is not theirs to see: the same answer. */
export function onNotFound(c: AppContext): Promise<Response> | Response {
  if (c.req.path.startsWith('/api/')) return problem('not-found', 404, 'no-page')
  return errorPage(c, 'not-found', 404, errorSentence('no-page', {}))
}

/** More was sent than is read, so nobody knows yet who it was. */
export function onTooLarge(c: AppContext): Promise<Response> | Response {
  if (c.req.path.startsWith('/api/')) return problem('too-large', 413, 'too-large')
  return errorPage(c, 'too-large', 413, errorSentence('too-large', {}))
}

function signedOut(c: AppContext, isApi: boolean): Response {
  if (isApi) {
    return problem('signed-out', 401, 'signed-out', {
      headers: { 'www-authenticate': 'Bearer realm="ringproof"' },
    })
  }
  const place = returnPlace(c)
  const signIn = place === '/' ? '/sign-in' : `/sign-in?next=${encodeURIComponent(place)}`
  if (c.req.header('hx-request') === undefined) return c.redirect(signIn, 303)
  // A redirect is followed silently, and the sign-in page would be put in the middle of the form.
  return c.body(null, 401, { 'hx-redirect': signIn })
}

async function internal(error: Error, c: AppContext, isApi: boolean): Promise<Response> {
  const request = Buffer.from(c.var.shop.randomBytes(5)).toString('hex')
  process.stderr.write(
    `${request} ${c.req.method} ${c.req.path}: ${error.stack ?? error.message}\n`,
  )
  if (isApi) return problem('internal', 500, 'internal', { details: { request } })
  return errorPage(c, 'internal', 500, errorSentence('internal', { request }))
}

function errorPage(
  c: AppContext,
  title: ProblemTitle,
  status: Parameters<typeof problem>[1],
  sentence: string,
): Promise<Response> {
  const page = <ErrorPage frame={frameOf(c)} title={errorTitles[title]} sentence={sentence} />
  return sendPage(c, page, status)
}
