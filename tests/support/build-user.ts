import type { User } from '../../src/domain/user.ts'

/** An inspector unless told otherwise. */
export function buildUser(changes: Partial<User> = {}): User {
  return {
    id: 2,
    name: 'ian',
    displayName: 'Ian',
    role: 'inspector',
    department: 'Inspection',
    customerId: null,
    isActive: true,
    ...changes,
  }
}
