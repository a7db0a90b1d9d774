/** The shapes in which what is known about a quantity is stated; JCGM 101:2008, 6.4. */
export const distributions = ['normal', 'rectangular', 'triangular', 'u-shaped', 't'] as const
export type Distribution = (typeof distributions)[number]
