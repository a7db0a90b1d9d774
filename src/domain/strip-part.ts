import { componentKinds } from './seal.ts'

/** What is looked at when a seal is stripped: its five components and the hardware round them. */
export const stripParts = [
  ...componentKinds,
  'sleeve',
  'gland',
  'drive',
  'fasteners',
  'other-hardware',
] as const
export type StripPart = (typeof stripParts)[number]
