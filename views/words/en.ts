import { chromeWords } from './en/chrome.ts'
import { signInWords } from './en/sign-in.ts'

/** Every word that a user reads, by place. Whole sentences for faults and refusals stand beside. */
export const words = {
  chrome: chromeWords,
  signIn: signInWords,
} as const
