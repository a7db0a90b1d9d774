/** A position at the customer's plant at which a seal runs. */
export type Equipment = {
  readonly id: number
  readonly customerId: number
  readonly tag: string
  readonly description: string
  readonly serviceFluid: string
}

export type NewEquipment = Omit<Equipment, 'id'>
