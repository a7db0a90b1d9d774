export const customersWords = {} as const
