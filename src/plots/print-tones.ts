import type { Tone } from './drawing.ts'

/**
 * The tones of a drawing on paper, as hex colours. Paper has one view: dark ink, white ground,
 * and the accent of the pages for what is pointed out. All hold on a copy without colour.
 */
export const printTones: Readonly<Record<Tone, string>> = {
  ink: '#1f1d1a',
  soft: '#57524b',
  faint: '#cfc8bc',
  paper: '#ffffff',
  accent: '#0d5058',
  bright: '#f1eee8',
  half: '#8f8a82',
  dark: '#37342f',
}
