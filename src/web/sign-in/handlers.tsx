import { setCookie } from 'hono/cookie'
import { AccountPage } from '../../../views/account-page.tsx'
import { SignInPage } from '../../../views/sign-in-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import type { Fault } from '../../domain/fault.ts'
import { openFields } from '../../domain/fields.ts'
import { passwordLength } from '../../domain/password-length.ts'
import type { Role } from '../../domain/role.ts'
import { listUsers } from '../../store/list-users.ts'
import { removeSession } from '../../store/remove-session.ts'
import { setPassword } from '../../store/set-password.ts'
import type { AppContext } from '../context.ts'
import { readForm } from '../read-form.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { dropSessionCookie, startSession } from '../session.ts'
import { tryPassword } from '../try-password.ts'
import { actor, viewer } from '../viewer.ts'

const homeOf: Readonly<Record<Role, string>> = {
  technician: '/bench',
  inspector: '/inspection',
  customer: '/my-seals',
  manager: '/bench',
}

export function home(c: AppContext): Response {
  const user = c.var.user
  return c.redirect(user === undefined ? '/sign-in' : homeOf[user.role], 303)
}

export function showSignIn(c: AppContext): Promise<Response> | Response {
  if (c.var.user !== undefined) return c.redirect(homeOf[c.var.user.role], 303)
  return signInPage(c, { name: '', next: c.req.query('next') ?? '', isRefused: false })
}

export async function signIn(c: AppContext): Promise<Response> {
  const fields = openFields(await readForm(c))
  const name = fields.typed('name').trim().slice(0, 60)
  const next = fields.typed('next')
  const tried = await tryPassword(c, name, fields.typed('password'))
  if (tried.kind === 'too-soon') throw slowDown(tried.waitS)
  if (tried.kind === 'wrong') return signInPage(c, { name, next, isRefused: true }, 422)
  startSession(c, tried.user)
  return c.redirect(isLocalPath(next) ? next : homeOf[tried.user.role], 303)
}

export function signOut(c: AppContext): Response {
  if (c.var.sessionHash !== undefined) removeSession(c.var.shop.store, c.var.sessionHash, actor(c))
  dropSessionCookie(c)
  return c.redirect('/sign-in', 303)
}

export async function setView(c: AppContext): Promise<Response> {
  const fields = openFields(await readForm(c))
  const view = fields.choice('view', ['auto', 'light', 'dark', 'lamp'])
  setCookie(c, 'ringproof-view', view, { path: '/', sameSite: 'Lax', maxAge: 31_536_000 })
  const returnTo = fields.typed('returnTo')
  return c.redirect(isLocalPath(returnTo) ? returnTo : '/', 303)
}

export function showAccount(c: AppContext): Promise<Response> {
  return accountPage(c, [], c.req.query('changed') !== undefined)
}

export async function changePassword(c: AppContext): Promise<Response> {
  const { store, hashPassword } = c.var.shop
  const user = viewer(c)
  const fields = openFields(await readForm(c))
  const tried = await tryPassword(c, user.name, fields.typed('old'))
  if (tried.kind === 'too-soon') throw slowDown(tried.waitS)
  if (tried.kind === 'wrong') fields.fault('old', 'wrong-password')
  const password = fields.typed('new')
  if (password.length < passwordLength.min) fields.fault('new', 'too-short', passwordLength)
  if (password.length > passwordLength.max) fields.fault('new', 'too-long', passwordLength)
  if (fields.faults.length > 0) return accountPage(c, fields.faults, false)
  setPassword(store, { userId: user.id, passwordHash: await hashPassword(password) }, actor(c))
  startSession(c, user)
  return c.redirect('/account?changed', 303)
}

function slowDown(waitS: number): AppError {
  return new AppError('too-many', 'slow-down', { waitS })
}

/** Only a path of our own, in signs that a header takes: `//elsewhere` and `/\elsewhere` are not. */
function isLocalPath(path: string): boolean {
  return /^\/(?!\/)[!-[\]-~]*$/.test(path)
}

function signInPage(
  c: AppContext,
  form: { name: string; next: string; isRefused: boolean },
  status: 200 | 422 = 200,
): Promise<Response> {
  const { demoAccounts, store } = c.var.shop
  const hasUsers = listUsers(store).length > 0
  const page = (
    <SignInPage frame={frameOf(c)} {...form} demoAccounts={demoAccounts} hasUsers={hasUsers} />
  )
  return sendPage(c, page, status)
}

function accountPage(c: AppContext, faults: readonly Fault[], isChanged: boolean) {
  const page = (
    <AccountPage frame={frameOf(c)} user={viewer(c)} faults={faults} isChanged={isChanged} />
  )
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}
