import { type Customer, customerNameLength } from './customer.ts'
import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export const customerFields = ['name', 'address', 'contact'] as const
export const customerTextLength = { address: 400, contact: 200 } as const

export type ParsedCustomer = Pick<Customer, (typeof customerFields)[number]>

/** Reads a customer: a name is needed; address and contact may come later. */
export function parseCustomer(input: Input): Parsed<ParsedCustomer> {
  const fields = openFields(input)
  fields.only(...customerFields)
  return fields.finish({
    name: fields.text('name', customerNameLength.max),
    address: fields.optionalText('address', customerTextLength.address),
    contact: fields.optionalText('contact', customerTextLength.contact),
  })
}
