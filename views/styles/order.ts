/** The style files in the order in which they are joined into the one style sheet. */
export const styleOrder: readonly string[] = [
  'tokens.css',
  'base.css',
  'layout.css',
  'top-bar.css',
  'controls.css',
  'choices.css',
  'verdict.css',
  'tables.css',
  'reading.css',
  'drawing.css',
  'print.css',
]
