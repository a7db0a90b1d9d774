export const roles = ['technician', 'inspector', 'customer', 'manager'] as const
export type Role = (typeof roles)[number]

/** Roles of people who work in the workshop. */
export const staffRoles: readonly Role[] = ['technician', 'inspector', 'manager']
