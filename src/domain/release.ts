/** The inspector's word on one hand-over. There is at most one for each. */
export type Decision = {
  readonly id: number
  readonly workOrderId: number
  readonly handOverId: number
  readonly outcome: 'released' | 'refused'
  readonly reason: string
  readonly byId: number
  readonly byName: string
  readonly byDepartment: string
  readonly at: string
}

export type HandOver = {
  readonly id: number
  readonly workOrderId: number
  readonly byId: number
  readonly byName: string
  readonly note: string
  readonly at: string
}
