/** The style files in the order in which they are joined into the one style sheet. */
export const styleOrder: readonly string[] = [
  'tokens.css',
  'base.css',
  'layout.css',
  'top-bar.css',
  'buttons.css',
  'fields.css',
  'choices.css',
  'notes.css',
  'verdict.css',
  'tables.css',
  'evidence.css',
  'reading.css',
  'recording.css',
  'drawing.css',
  'print.css',
]
