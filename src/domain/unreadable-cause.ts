/** Why no bands could be read, as far as the technician can tell; each has its advice. */
export const unreadableCauses = ['matte', 'dirty', 'wet', 'gap-too-wide', 'other'] as const
export type UnreadableCause = (typeof unreadableCauses)[number]
