import type { Context } from 'hono'
import type { User } from '../domain/user.ts'
import type { Workshop } from '../domain/workshop.ts'
import type { Store } from '../store/open.ts'
import type { Assets } from './assets.ts'

/** What the composition root hands to the web: the only clock and the only randomness. */
export type Shop = {
  readonly store: Store
  readonly assets: Assets
  readonly workshop: Workshop
  readonly origin: string
  readonly now: () => Date
  /** Cryptographically strong bytes. */
  readonly randomBytes: (count: number) => Uint8Array
  readonly hashPassword: (password: string) => Promise<string>
  readonly verifyPassword: (hash: string, password: string) => Promise<boolean>
  /** Shown on the sign-in page; empty unless the invented workshop is loaded on loopback. */
  readonly demoAccounts: readonly DemoAccount[]
  /** Invented data is present: every page says so. */
  readonly isInvented: boolean
}

export type DemoAccount = {
  readonly name: string
  readonly role: string
  readonly password: string
}

export type View = 'auto' | 'light' | 'dark' | 'lamp'

export type AppEnv = {
  Variables: {
    shop: Shop
    user: User | undefined
    view: View
    /** The hash of the session's token, for signing out. */
    sessionHash: string | undefined
    secureHeadersNonce?: string
  }
}

export type AppContext = Context<AppEnv>
export type Handler = (c: AppContext) => Response | Promise<Response>
