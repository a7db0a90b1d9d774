import { words } from '../words/en.ts'

/** Where records of the strip bench and the assembly are begun, below the order's address. */
export const stripActs = [
  ['wear-tracks', words.wearTrack.act],
  ['spring-checks', words.springCheck.act],
  ['assembly', words.assembly.act],
] as const
