export const workOrdersWords = {} as const
