/** Words that worn tracks, springs and assembly share. */
export const stripCommonWords = {
  note: 'Note',
  instrument: 'Read with',
  noInstrument: 'a rule or caliper that is not in the list',
  moreTitle: 'Instrument and note',
  answer: 'What it comes to',
  recordedBy: (name: string, at: string) => `Recorded by ${name}, ${at}`,
  corrected: (name: string, at: string, reason: string) =>
    `Corrected by ${name} on ${at}: ${reason}`,
  readWith: (number: string) => `read with ${number}`,
} as const
