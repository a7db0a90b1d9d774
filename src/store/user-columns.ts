import { user } from './schema/user.ts'

/** The columns of a user without the hash, which leaves the store in one function only. */
export const userColumns = {
  id: user.id,
  name: user.name,
  displayName: user.displayName,
  role: user.role,
  department: user.department,
  customerId: user.customerId,
  isActive: user.isActive,
}
