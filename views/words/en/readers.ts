/** Several people who read the same face: their figures side by side. */
export const readersWords = {
  title: 'Read by several',
  lead: 'Each by their newest reading since the face was last lapped, as far as the log of laps says. It decides nothing: for the release counts the newest reading as left, whoever took it.',
  columns: { face: 'Face', readings: 'Readings', mean: 'Mean', spread: 'Spread', count: 'Readers' },
  reading: (name: string, figure: string) => `${name}: ${figure}`,
  spreadOf: (figure: string) => `s = ${figure}`,
  spreadDetail: 'standard deviation of one reading',
  use: 'Take the spread of those who have read this face as the scatter of counts',
  offer: (face: string, count: number, spread: string) =>
    `${face}: ${count} readers, s = ${spread}.`,
  useHint:
    'Your own count stays the result. With few readers a spread is known badly, and the coverage factor says so.',
} as const
