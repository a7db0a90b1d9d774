export const benchWords = {} as const
