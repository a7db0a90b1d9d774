import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'
import { passwordLength } from './password-length.ts'
import { roles } from './role.ts'
import type { User } from './user.ts'

export const personFields = [
  'name',
  'displayName',
  'role',
  'department',
  'customerId',
  'password',
] as const
export const personTextLength = { name: 60, displayName: 120, department: 120 } as const

export type ParsedPerson = {
  readonly person: Omit<User, 'id' | 'isActive'>
  /** As typed, spaces included; it is hashed and then forgotten. */
  readonly password: string
}

/** Reads a new person. One of a customer belongs to a customer of the list; nobody else does. */
export function parsePerson(
  input: Input,
  context: { readonly customerIds: readonly number[] },
): Parsed<ParsedPerson> {
  const fields = openFields(input)
  fields.only(...personFields)
  const person = {
    name: fields.text('name', personTextLength.name),
    displayName: fields.text('displayName', personTextLength.displayName),
    role: fields.choice('role', roles),
    department: fields.optionalText('department', personTextLength.department),
    customerId: readCustomer(fields, input.role === 'customer', context.customerIds),
  }
  return fields.finish({ person, password: readPassword(fields) })
}

function readCustomer(
  fields: Fields,
  isCustomer: boolean,
  customerIds: readonly number[],
): number | null {
  if (!isCustomer) {
    if (fields.isGiven('customerId')) fields.fault('customerId', 'not-here')
    return null
  }
  const typed = fields.typed('customerId')
  const found = customerIds.find((id) => String(id) === typed)
  if (found === undefined) fields.fault('customerId', typed === '' ? 'empty' : 'not-known')
  return found ?? null
}

function readPassword(fields: Fields): string {
  const password = fields.typed('password')
  if (password === '') fields.fault('password', 'empty')
  else if (password.length < passwordLength.min) {
    fields.fault('password', 'too-short', passwordLength)
  } else if (password.length > passwordLength.max) {
    fields.fault('password', 'too-long', passwordLength)
  }
  return password
}
