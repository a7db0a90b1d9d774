import type { Role } from './role.ts'

/** Who acts. `customerId` is set for the role customer and for no other. */
export type User = {
  readonly id: number
  /** What is typed at sign-in. */
  readonly name: string
  readonly displayName: string
  readonly role: Role
  /** Printed beside the name on the certificate (so that independence shows, EN 10204 type 3.1). */
  readonly department: string
  readonly customerId: number | null
  readonly isActive: boolean
}
