import type { Role } from './role.ts'

/** Who acts. `customerId` is set for the role customer and for no other. */
export type User = {
  readonly id: number
  /** What is typed at sign-in. */
  readonly name: string
  readonly displayName: string
  readonly role: Role
  /** Printed beside the name on the certificate (EN 10204: who, function, department). */
  readonly department: string
  readonly customerId: number | null
  readonly isActive: boolean
}
