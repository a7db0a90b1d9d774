import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import type { User } from '../domain/user.ts'
import { addSession } from '../store/add-session.ts'
import { findSession } from '../store/find-session.ts'
import { findUserByToken } from '../store/find-user-by-token.ts'
import { secretHash } from '../store/secret-hash.ts'
import type { AppContext } from './context.ts'

/** A shift and a half: nobody is signed out in the middle of a test. */
export const sessionHours = 12

/** Over HTTPS the name binds the cookie to this host; a loopback address has no HTTPS. */
function cookieName(c: AppContext): string {
  return isSecure(c) ? '__Host-ringproof' : 'ringproof'
}

function isSecure(c: AppContext): boolean {
  return c.var.shop.origin.startsWith('https:')
}

/** Starts a session for a user whose password was right. */
export function startSession(c: AppContext, user: User): void {
  const { store, now, randomBytes } = c.var.shop
  const token = Buffer.from(randomBytes(32)).toString('base64url')
  const at = now()
  const expiresAt = new Date(at.getTime() + sessionHours * 3_600_000)
  addSession(
    store,
    { tokenHash: secretHash(token), userId: user.id, expiresAt: expiresAt.toISOString() },
    { userId: user.id, name: user.displayName, at: at.toISOString() },
  )
  setCookie(c, cookieName(c), token, {
    httpOnly: true,
    sameSite: 'Lax',
    secure: isSecure(c),
    path: '/',
    maxAge: sessionHours * 3600,
  })
}

/** Who a page's cookie stands for. */
export function readSession(c: AppContext): { user: User; hash: string } | undefined {
  const token = getCookie(c, cookieName(c))
  if (token === undefined || token === '') return undefined
  const hash = secretHash(token)
  const user = findSession(c.var.shop.store, hash, c.var.shop.now().toISOString())
  return user === undefined ? undefined : { user, hash }
}

export function dropSessionCookie(c: AppContext): void {
  deleteCookie(c, cookieName(c), { path: '/', secure: isSecure(c) })
}

/** Who a bearer token stands for; undefined where none is sent or it is not known. */
export function readToken(c: AppContext): User | undefined {
  const match = /^Bearer ([\w-]{20,200})$/i.exec(c.req.header('authorization') ?? '')
  const token = match?.[1]
  return token === undefined ? undefined : findUserByToken(c.var.shop.store, secretHash(token))
}
