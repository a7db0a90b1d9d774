export type Customer = {
  readonly id: number
  readonly name: string
  readonly address: string
  readonly contact: string
  readonly isInvented: boolean
}

export type NewCustomer = Omit<Customer, 'id'>
export const customerNameLength = { min: 1, max: 120 } as const
